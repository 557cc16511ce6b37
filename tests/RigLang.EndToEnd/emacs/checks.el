;;; checks.el --- What the session needs: waiting for things, finding places by their text  -*- lexical-binding: t; -*-

;;; Code:

(require 'ert)
(require 'ert-x)
(require 'cl-lib)
(require 'package)

;; Eglot came with Debian's package, or with Emacs itself.
(package-initialize)

(defconst riglang-test-patience 30 "Seconds that anything may take before its test fails.")

(defun riglang-test-eventually (what condition)
  "Let Emacs work until CONDITION holds and give its value; fail with WHAT was waited for when it never does."
  (let ((late (+ (float-time) riglang-test-patience)) value)
    (while (and (not (setq value (funcall condition))) (< (float-time) late))
      ;; Batch Emacs is never idle: what would be done then (edits sent, findings drawn) is done here.
      (ert-run-idle-timers)
      (accept-process-output nil 0.02))
    (or value (ert-fail (format "waited in vain for %s; findings: %S" what (riglang-test-findings))))))

(defun riglang-test-findings ()
  "What Flymake shows in this buffer."
  (mapcar (lambda (found) (list (flymake-diagnostic-beg found) (flymake-diagnostic-type found) (flymake-diagnostic-text found)))
          (flymake-diagnostics)))

(defun riglang-test-errors ()
  "The errors that Flymake shows in this buffer."
  (cl-remove-if-not (lambda (found) (memq (flymake-diagnostic-type found) '(eglot-error :error))) (flymake-diagnostics)))

(defun riglang-test-goto (text &optional behind)
  "Go to the first TEXT behind the first BEHIND."
  (goto-char (point-min))
  (when behind (search-forward behind))
  (search-forward text)
  (goto-char (match-beginning 0)))

(defun riglang-test-replace (old new &optional behind)
  "Type NEW in place of the first OLD behind the first BEHIND."
  (riglang-test-goto old behind)
  (delete-char (length old))
  (insert new)
  ;; The edit is sent now: another buffer's questions wouldn't send it first.
  (ert-run-idle-timers))

(defun riglang-test-open (file)
  "Open FILE and wait for the server."
  (find-file file)
  ;; Eglot starts when the command that opened the file is over; batch Emacs has no commands.
  (run-hooks 'post-command-hook)
  (riglang-test-eventually "the server" #'eglot-current-server))

(defun riglang-test-run ()
  "Run all tests in the order they stand in, print the counts and leave."
  (let* ((stats (ert-run-tests-batch t))
         (passed (ert-stats-completed-expected stats)))
    (eglot-shutdown-all)
    (princ (format "# pass %d\n# fail %d\n" passed (- (ert-stats-total stats) passed)))
    (kill-emacs (if (= passed (ert-stats-total stats)) 0 1))))

;;; checks.el ends here
