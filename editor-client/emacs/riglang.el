;;; riglang.el --- Rig files, checked by the riglang server through Eglot  -*- lexical-binding: t; -*-

;; (load "/path/to/editor-client/emacs/riglang.el"); Emacs 29 has Eglot, older ones take it from GNU ELPA.

;;; Code:

(require 'eglot)

(defgroup riglang nil "Rig files." :group 'languages)

(defcustom riglang-command '("riglang" "lsp")
  "The server: program and arguments."
  :type '(repeat string))

(defcustom riglang-unit-system "asWritten"
  "The units of computed values: those of the file's author, metric ones, or US ones."
  :type '(choice (const :tag "As written" "asWritten") (const :tag "Metric" "metric") (const :tag "US" "us")))

(defcustom riglang-practice nil
  "The practice of rigs that name none: \"common-na\", \"common-eu\" or one of your own."
  :type '(choice (const :tag "None" nil) string))

(defvar riglang-font-lock
  '(("^[[:alpha:]][[:alnum:]-]*" . font-lock-keyword-face)
    ("^[ ]+\\([[:alpha:]][[:alnum:]-]*\\)" 1 font-lock-variable-name-face)
    ("^[[:alpha:]][[:alnum:]-]*[ ]+\\([[:alpha:]][[:alnum:]-]*\\)" 1 font-lock-type-face))
  "Colours by the shape of a line: the first word is the keyword.")

;;;###autoload
(define-derived-mode rig-mode prog-mode "Rig"
  "Rig files: a tow vehicle with its trailer."
  (setq-local comment-start "# "
              comment-start-skip "#+ *"
              indent-tabs-mode nil
              tab-width 4
              indent-line-function #'indent-relative
              font-lock-defaults '(riglang-font-lock))
  (modify-syntax-entry ?# "<" (syntax-table))
  (modify-syntax-entry ?\n ">" (syntax-table))
  (modify-syntax-entry ?\" "\"" (syntax-table))
  (modify-syntax-entry ?- "_" (syntax-table)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.rig\\'" . rig-mode))

;; A function, so that both options may be set after this file is loaded.
(defun riglang-contact (&rest _)
  "How Eglot starts the server."
  (append riglang-command (list :initializationOptions (list :unitSystem riglang-unit-system :practice riglang-practice))))

(add-to-list 'eglot-server-programs (cons 'rig-mode #'riglang-contact))
(add-hook 'rig-mode-hook #'eglot-ensure)

;; The server offers the same behind the verdict above a rig.
(defun riglang-report ()
  "Show the report of the rig, trip, weighing or run that point stands in, else of the whole file."
  (interactive)
  (let ((answer (jsonrpc-request (eglot--current-server-or-lose) :riglang/report
                                 (append (list :textDocument (list :uri (eglot--path-to-uri buffer-file-name)))
                                         (when-let ((subject (riglang--subject))) (list :subject subject))))))
    (with-current-buffer (get-buffer-create "*rig report*")
      (let ((inhibit-read-only t))
        (erase-buffer)
        (insert (plist-get answer :text)))
      (goto-char (point-min))
      (special-mode)
      (display-buffer (current-buffer)))))

(defun riglang--subject ()
  "The declaration that point stands in, as the server calls it; nil where that is nothing to report on."
  (save-excursion
    (end-of-line)
    (when (and (re-search-backward "^[^[:space:]#]" nil t)
               (looking-at "\\(rig\\|trip\\|weighing\\|run\\)[ \t]+\\([^[:space:]#]+\\)"))
      (concat (match-string-no-properties 1) " " (match-string-no-properties 2)))))

(provide 'riglang)
;;; riglang.el ends here
