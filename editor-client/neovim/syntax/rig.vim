" Colours by the shape of a line alone: the first word is the keyword, so no word list is needed here.
if exists("b:current_syntax")
  finish
endif

syntax match rigKeyword /^\s\+\zs[[:alpha:]][[:alnum:]-]*/
syntax match rigOpening /^[[:alpha:]][[:alnum:]-]*/ nextgroup=rigName skipwhite
syntax match rigName /[[:alpha:]][^[:space:]"#]*/ contained nextgroup=rigLike skipwhite
syntax keyword rigLike like contained nextgroup=rigName skipwhite
syntax match rigNumber /\%(^\|\s\)\@1<=[-+−]\?\%(\d[0-9_]*-\)\?\d[0-9_]*\%(\.\d\+\)\?\%([/:]\d\+\)\?/
syntax match rigSign /[±?=<>≤≥]\|\.\.\|+-/
syntax region rigText start=/"/ end=/"\|$/ oneline
syntax match rigComment /\%(^\|\s\)\@1<=#.*$/ contains=@Spell

highlight default link rigKeyword Identifier
highlight default link rigOpening Statement
highlight default link rigName Type
highlight default link rigLike Statement
highlight default link rigNumber Number
highlight default link rigSign Operator
highlight default link rigText String
highlight default link rigComment Comment

let b:current_syntax = "rig"
