vim.api.nvim_create_autocmd({ "BufRead", "BufNewFile" }, {
  pattern = "*.rig",
  callback = function()
    vim.bo.filetype = "rig"
  end,
})
