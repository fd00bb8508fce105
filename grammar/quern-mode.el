;;; quern-mode.el --- Recipes and formulas as plain text  -*- lexical-binding: t; -*-

;; SPDX-License-Identifier: MIT
;; Package-Requires: ((emacs "27.1"))
;; Keywords: languages

;;; Commentary:

;; A major mode for .quern files.  With `quern-mode-server' it starts the language server under eglot: everything
;; beyond the first colour comes from there.
;;
;; Made from grammar/lines.json by packages/syntax/scripts/generate.mjs.

;;; Code:

(defgroup quern nil
  "Recipes and formulas as plain text."
  :group 'languages)

(defcustom quern-mode-server nil
  "Path of quern-server.cjs; nil starts no language server."
  :type '(choice (const :tag "None" nil) file))

(defcustom quern-mode-node "node"
  "Command that runs the language server: Node 20.19 or later."
  :type 'string)

(defconst quern-mode--block-words
  '(
    "recipe"
    "make"
    "variant"
    "food"
    "culture"
    "kitchen"
    "menu"
    "course")
  "Words that begin a block.")

(defconst quern-mode--step-words
  '(
    "hands"
    "wait"
    "oven"
    "hob"
    "every")
  "Words that say who or what is busy.")

(defconst quern-mode--in-words
  '(
    "about"
    "all"
    "half"
    "rest"
    "enough"
    "a little"
    "optional"
    "or"
    "lose"
    "bin"
    "save"
    "check")
  "Words that say what goes in and out.")

(defconst quern-mode--fact-words
  '(
    "by"
    "source"
    "photo"
    "language"
    "note"
    "tip"
    "warning"
    "serve with"
    "keywords"
    "free of"
    "contains"
    "traces"
    "cup"
    "gives"
    "serves"
    "vessel"
    "basis"
    "count"
    "use"
    "baked"
    "keeps"
    "best after"
    "per"
    "parts"
    "weighs"
    "swap"
    "drop"
    "add"
    "times"
    "has"
    "awake"
    "room"
    "stand"
    "hold"
    "stretch"
    "date")
  "Words that give facts of a block.")

(defun quern-mode--first (words)
  "A regular expression for a line that one of WORDS opens."
  (concat "^[ \t]*" (regexp-opt words t) "\\(?:[ \t,:=]\\|$\\)"))

(defconst quern-mode-font-lock-keywords
  `(("^[ \t]*//.*$" 0 'font-lock-comment-face t)
    (,(quern-mode--first quern-mode--block-words) 1 'font-lock-keyword-face)
    (,(quern-mode--first quern-mode--step-words) 1 'font-lock-function-name-face)
    (,(quern-mode--first quern-mode--in-words) 1 'font-lock-builtin-face)
    (,(quern-mode--first quern-mode--fact-words) 1 'font-lock-type-face)
    ("^recipe[ \t]+\\(.*\\)$" 1 'bold)
    ("\\[[^]\n]*\\]" 0 'font-lock-constant-face)
    ("^[ \t]*\\([0-9¼½¾⅐-⅞][^ \t\n]*\\)" 1 'font-lock-constant-face))
  "First colour of a recipe; `font-lock-defaults' of `quern-mode'.")

;;;###autoload
(define-derived-mode quern-mode prog-mode "Quern"
  "Major mode for recipes and formulas."
  (setq-local comment-start "// ")
  (setq-local comment-start-skip "//[ \t]*")
  (setq-local comment-end "")
  (setq-local indent-tabs-mode nil)
  (setq-local tab-width 2)
  ;; The server lays lines out; Tab and Return keep the column of the line above.
  (setq-local indent-line-function #'indent-relative-first-indent-point)
  (setq-local case-fold-search t)
  (add-hook 'completion-at-point-functions #'quern-mode-completion-at-point -50 t)
  ;; A quotation mark in a sentence opens no string.
  (setq-local font-lock-defaults '(quern-mode-font-lock-keywords t t)))

;;;###autoload
(add-to-list 'auto-mode-alist '("\\.quern\\'" . quern-mode))

(defvar eglot-server-programs)
(declare-function eglot-ensure "eglot")

(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs
               (cons 'quern-mode
                     (lambda (&rest _)
                       (list quern-mode-node (expand-file-name quern-mode-server) "--stdio")))))

(declare-function eglot-managed-p "eglot")
(declare-function eglot-completion-at-point "eglot")
(declare-function eglot--lsp-position-to-point "eglot")
(declare-function eglot--snippet-expansion-fn "eglot")

(defun quern-mode--item (candidate)
  "What the server said of CANDIDATE."
  (get-text-property 0 'eglot--lsp-item candidate))

(defun quern-mode-completion-at-point ()
  "Complete names of several words.
Eglot takes the last word for all that is typed.  The server says
where the name begins."
  (when (and (fboundp 'eglot-managed-p) (eglot-managed-p))
    (pcase (eglot-completion-at-point)
      (`(,_ ,to ,table . ,more)
       (let* ((all (all-completions "" table))
              (edit (and all (plist-get (quern-mode--item (car all)) :textEdit)))
              (from (and edit (eglot--lsp-position-to-point (plist-get (plist-get edit :range) :start)))))
         (when from
           (append
            (list from (max to from) table
                  :exit-function
                  (lambda (candidate status)
                    (when (memq status '(finished exact))
                      (let* ((item (or (quern-mode--item candidate)
                                       (quern-mode--item (car (member candidate all)))))
                             (text (plist-get (plist-get item :textEdit) :newText)))
                        (when text
                          (delete-region from (point))
                          (funcall (or (and (eql (plist-get item :insertTextFormat) 2)
                                            (eglot--snippet-expansion-fn))
                                       #'insert)
                                   text))))))
            more)))))))

(defun quern-mode--serve ()
  "Start the language server where one is named."
  (when quern-mode-server
    (require 'eglot)
    (eglot-ensure)))

(add-hook 'quern-mode-hook #'quern-mode--serve)

(provide 'quern-mode)
;;; quern-mode.el ends here
