vim.bo.commentstring = "# %s"
vim.bo.comments = ":#"
vim.bo.expandtab = true
vim.bo.shiftwidth = 4
vim.bo.softtabstop = 4
vim.bo.tabstop = 4
-- Names have hyphens: front-axle-load is one word.
vim.opt_local.iskeyword:append("-")
vim.opt_local.foldmethod = "indent"
vim.opt_local.foldlevel = 99
