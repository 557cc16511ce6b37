-- For Neovim 0.11 and newer: vim.lsp.enable("riglang") is all that it takes.
return {
  cmd = { "riglang", "lsp" },
  filetypes = { "rig" },
  root_markers = { ".git" },
}
