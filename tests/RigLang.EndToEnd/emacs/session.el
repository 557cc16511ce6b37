;;; session.el --- A user's session in Emacs: open, break a line, mend it, ask for values, go, complete, rename  -*- lexical-binding: t; -*-

;; The names are numbered, since ERT runs tests by name and these go on from each other.

;;; Code:

;; What a user writes, with the built server in place of the one on the PATH.
(load (expand-file-name "riglang.el" (getenv "RIGLANG_SETTINGS")))
(setq riglang-command (list "dotnet" (getenv "RIGLANG_DLL") "lsp"))
(setq eglot-sync-connect 30
      eglot-confirm-server-initiated-edits nil
      make-backup-files nil)

(defconst riglang-test-vehicle (expand-file-name "people-carrier/1-van.rig"))
(defconst riglang-test-trip (expand-file-name "people-carrier/trips/saddle.rig"))
(defconst riglang-test-overloaded (expand-file-name "overloaded/too-much.rig"))
(defconst riglang-test-rig (expand-file-name "people-carrier/6-rigs.rig"))

(defun riglang-test-hover ()
  "What Eglot tells Eldoc about the text at point."
  (let (told)
    (eglot-hover-eldoc-function (lambda (text &rest _) (setq told text)))
    (riglang-test-eventually "a hover" (lambda () told))))

(ert-deftest riglang-01-a-rig-file-is-known-and-the-server-comes-to-it ()
  (riglang-test-open riglang-test-vehicle)
  (should (eq major-mode 'rig-mode))
  (should (eglot-managed-p)))

(ert-deftest riglang-02-an-overloaded-example-has-errors-and-a-sound-one-none ()
  (riglang-test-open riglang-test-overloaded)
  (riglang-test-eventually "errors" #'riglang-test-errors)
  (should (cl-some (lambda (found) (string-match-p "over" (flymake-diagnostic-text found))) (riglang-test-errors)))
  ;; It was opened first, so it was reported first.
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (should-not (riglang-test-errors))))

(ert-deftest riglang-03-a-mass-in-place-of-a-length-is-marked-where-it-stands ()
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (riglang-test-replace "2.94 m" "2.94 kg" "wheelbase")
    (riglang-test-eventually "an error" #'riglang-test-errors)
    (let ((found (car (riglang-test-errors))))
      (should (equal "kg" (buffer-substring-no-properties (flymake-diagnostic-beg found) (flymake-diagnostic-end found))))
      (should (string-match-p "length" (flymake-diagnostic-text found))))))

(ert-deftest riglang-04-a-finding-stays-until-the-line-is-mended ()
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (riglang-test-replace "2.94 kg" "2.94 m" "wheelbase")
    (riglang-test-replace "wheelbase " "whelbase " "\n    ")
    (riglang-test-eventually "an error" #'riglang-test-errors)
    ;; Typed inside the marked word, so that only new findings take the mark away.
    (riglang-test-goto "lbase ")
    (insert "e")
    (should (riglang-test-errors))
    (riglang-test-eventually "the error to go" (lambda () (null (riglang-test-errors))))))

(ert-deftest riglang-05-eldoc-shows-the-computed-load-of-a-rig ()
  (riglang-test-open riglang-test-rig)
  (riglang-test-goto "coast" "\nrig ")
  (let ((told (riglang-test-hover)))
    ;; The file expects 1180 kg ± 15 kg of itself.
    (should (string-match "Axle front +\\([0-9]+\\) kg +of 1350 kg" told))
    (should (<= 1165 (string-to-number (match-string 1 told)) 1195))))

(ert-deftest riglang-06-unsaved-text-of-another-buffer-counts ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (riglang-test-goto "coast" "\nrig ")
    (let ((before (riglang-test-hover))
          (other (find-file-noselect riglang-test-vehicle)))
      (with-current-buffer other (riglang-test-replace "1195 kg" "1295 kg" "carries"))
      (should-not (equal before (riglang-test-hover)))
      (with-current-buffer other (riglang-test-replace "1295 kg" "1195 kg" "carries"))
      (should (equal before (riglang-test-hover))))))

(ert-deftest riglang-07-a-name-leads-to-its-declaration-in-another-file ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (riglang-test-goto "van" "\n    vehicle")
    (let ((found (xref-backend-definitions 'eglot (xref-backend-identifier-at-point 'eglot))))
      (should (= 1 (length found)))
      (let ((place (xref-item-location (car found))))
        (should (equal riglang-test-vehicle (file-truename (xref-location-group place))))
        (with-current-buffer (find-file-noselect riglang-test-vehicle)
          (goto-char (point-min))
          (forward-line (1- (xref-location-line place)))
          (should (looking-at "vehicle van")))))))

(ert-deftest riglang-08-completion-offers-the-names-of-the-kind ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (riglang-test-goto "van" "\n    vehicle")
    (pcase-let ((`(,_start ,_end ,table . ,_) (eglot-completion-at-point)))
      (let ((offered (all-completions "" table)))
        (should (cl-find "van" offered :test #'string-prefix-p))
        (should-not (cl-find "wren" offered :test #'string-prefix-p))))))

(ert-deftest riglang-09-the-outline-has-the-declarations ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (should (string-match-p "coast" (format "%S" (eglot-imenu))))))

(ert-deftest riglang-10-a-fix-is-applied-by-eglot-itself ()
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (riglang-test-replace "wheelbase " "wheelbse " "\n    ")
    (riglang-test-eventually "an error" #'riglang-test-errors)
    (riglang-test-goto "wheelbse")
    (let* ((offered (eglot-code-actions (point) (point) "quickfix"))
           (wanted (cl-find-if (lambda (action) (string-match-p "wheelbase" (plist-get action :title))) offered)))
      (should wanted)
      (eglot--apply-workspace-edit (plist-get wanted :edit)))
    (riglang-test-eventually "the error to go" (lambda () (null (riglang-test-errors))))
    (goto-char (point-min))
    (should (search-forward "\n    wheelbase " nil t))))

(ert-deftest riglang-11-formatting-takes-stray-blanks-away ()
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (let ((before (buffer-string)))
      (riglang-test-goto "\n    overhang")
      (insert "   ")
      (eglot-format-buffer)
      (should (equal before (buffer-string))))))

(ert-deftest riglang-12-a-rename-reaches-every-file ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (riglang-test-goto "coast" "\nrig ")
    ;; It asks before it edits files that aren't open.
    (cl-letf (((symbol-function 'y-or-n-p) #'always))
      (eglot-rename "shore"))
    (goto-char (point-min))
    (should (search-forward "rig coast-full like shore" nil t))
    (with-current-buffer (find-file-noselect riglang-test-trip)
      (goto-char (point-min))
      (should (re-search-forward "^    rig +shore$" nil t)))))

(ert-deftest riglang-13-the-message-line-shows-what-a-line-takes ()
  (with-current-buffer (find-file-noselect riglang-test-vehicle)
    (riglang-test-goto " at 1.42 m behind" "item driver")
    (let (told)
      (eglot-signature-eldoc-function (lambda (text &rest _) (setq told text)))
      (should (string-match-p "item" (riglang-test-eventually "a signature" (lambda () told)))))))

(ert-deftest riglang-14-the-report-of-a-rig-is-shown ()
  (with-current-buffer (find-file-noselect riglang-test-rig)
    (riglang-test-goto "restoration" "\nrig ")
    (riglang-report)
    (with-current-buffer "*rig report*"
      (should (string-prefix-p "# rig shore" (buffer-string)))
      (should (string-match-p "Front axle load +[0-9]+ kg" (buffer-string))))))

;;; session.el ends here
