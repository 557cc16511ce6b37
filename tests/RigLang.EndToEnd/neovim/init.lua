-- What a user writes, with the built server in place of the one on the PATH.
vim.opt.runtimepath:append(vim.env.RIGLANG_SETTINGS)
vim.cmd("filetype plugin indent on")
vim.cmd("syntax enable")
local dll = vim.env.RIGLANG_DLL
require("riglang").setup({ cmd = dll:match("%.mjs$") and { "node", dll } or { "dotnet", dll, "lsp" } })
