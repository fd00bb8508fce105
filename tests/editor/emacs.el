;;; emacs.el --- Emacs with eglot as a real client  -*- lexical-binding: t; -*-

;; Opens a recipe with the mode and the set-up that docs/editors.md gives, does what a cook does, and writes what is seen
;; as JSON. Without a window nobody is idle, so what eglot does after half a second of quiet is asked for by name.

(require 'json)
(require 'cl-lib)

(defvar folder (file-name-as-directory (getenv "QUERN_FOLDER")))

(load (getenv "QUERN_MODE") nil t)
(setq quern-mode-server (getenv "QUERN_SERVER")
      quern-mode-node (getenv "QUERN_NODE"))
(package-initialize)
(require 'eglot)
(require 'flymake)

(defun await (what holds)
  (with-timeout (20 (princ (format "waited in vain for %s\n" what) #'external-debugging-output)
                    (kill-emacs 1))
    (while (not (funcall holds)) (accept-process-output nil 0.02))))

(defun go-to (text &optional back)
  (goto-char (point-min))
  (search-forward text)
  (backward-char (or back 0)))

(defun tell-server () (eglot--signal-textDocument/didChange))

(switch-to-buffer (find-file-noselect (expand-file-name "loaf.quern" folder)))
;; `eglot-ensure' waits for the end of the command that opened the file.
(run-hooks 'post-command-hook)
(await "the server" #'eglot-managed-p)
(font-lock-ensure)

(let (messages hover completion completed renamed formatted mended cleared imenu
      (mode (symbol-name major-mode))
      (face (progn (go-to "make" 4) (symbol-name (get-text-property (point) 'face)))))
  (flymake-start)
  (await "a message" #'flymake-diagnostics)
  (setq messages
        (mapcar (lambda (one)
                  (save-excursion
                    (goto-char (flymake-diagnostic-beg one))
                    `((line . ,(1- (line-number-at-pos))) (column . ,(current-column))
                      (text . ,(flymake-diagnostic-text one)))))
                (flymake-diagnostics)))

  (go-to "all leaven" 3)
  (eglot-hover-eldoc-function (lambda (text &rest _) (setq hover (and text (substring-no-properties text)))))
  (await "hover" (lambda () hover))

  (go-to "250 g water\n")
  (insert "  20 g strong wh\n")
  (backward-char)
  (tell-server)
  (pcase-let ((`(,from ,to ,table . ,_) (run-hook-with-args-until-success 'completion-at-point-functions)))
    (let* ((typed (buffer-substring from to))
           (all (all-completions typed table))
           (sort (completion-metadata-get (completion-metadata typed table nil) 'display-sort-function)))
      (setq completion (mapcar #'substring-no-properties (funcall sort all)))))
  (insert "eat")
  (save-excursion (insert ", sifted"))
  (tell-server)
  (completion-at-point)
  (setq completed (buffer-substring (line-beginning-position) (line-end-position)))
  (delete-region (line-beginning-position) (line-end-position))
  (delete-char 1)
  (tell-server)

  (setq imenu (mapcar #'car (eglot-imenu)))

  (go-to "all leaven" 3)
  (eglot-rename "levain")
  (setq renamed (buffer-string))

  (eglot-format-buffer)
  (setq formatted (buffer-string))

  (go-to "hnads" 2)
  ;; The first fix is the one that Return takes.
  (cl-letf (((symbol-function 'completing-read) (lambda (_ choices &rest _) (caar choices))))
    (let ((last-nonmenu-event t))
      (eglot-code-actions (point) (point) "quickfix" t)))
  (setq mended (buffer-string))
  (tell-server)
  (await "the message to go" (lambda () (null (flymake-diagnostics))))
  (setq cleared t)

  (with-temp-file (expand-file-name "seen.json" folder)
    (insert (json-encode
             `((version . ,emacs-version) (mode . ,mode) (face . ,face)
               (messages . ,(vconcat messages)) (hover . ,hover) (completion . ,(vconcat completion)) (completed . ,completed)
               (imenu . ,(vconcat imenu)) (renamed . ,renamed) (formatted . ,formatted) (mended . ,mended)
               (cleared . ,cleared))))))

(eglot-shutdown-all)
(kill-buffer)
(kill-emacs 0)
