-- Starts the RigLang server for rig files: require("riglang").setup{}. Works from Neovim 0.7 on.
local M = {}

local defaults = {
  cmd = { "riglang", "lsp" },
  -- The units of computed values: "asWritten" (those of the file's author), "metric" or "us".
  unit_system = "asWritten",
  -- K shows the values under the cursor, gd goes to a name's declaration, <C-x><C-o> completes.
  keymaps = true,
  on_attach = nil,
}

local config = defaults
local clients = {} -- root folder -> client id, for Neovim 0.7

local function root_of(file)
  local folder = vim.fn.fnamemodify(file, ":p:h")
  local git = vim.fn.finddir(".git", vim.fn.escape(folder, " ,;") .. ";")
  return git == "" and folder or vim.fn.fnamemodify(git, ":p:h:h")
end

local function on_attach(client, buffer)
  vim.api.nvim_buf_set_option(buffer, "omnifunc", "v:lua.vim.lsp.omnifunc")
  if config.keymaps then
    vim.keymap.set("n", "K", vim.lsp.buf.hover, { buffer = buffer, desc = "Show the values here" })
    vim.keymap.set("n", "gd", vim.lsp.buf.definition, { buffer = buffer, desc = "Go to the declaration" })
  end
  if config.on_attach then
    config.on_attach(client, buffer)
  end
end

local function client_settings(root)
  return {
    name = "riglang",
    cmd = config.cmd,
    root_dir = root,
    workspace_folders = { { uri = vim.uri_from_fname(root), name = root } },
    init_options = { unitSystem = config.unit_system },
    settings = { riglang = { unitSystem = config.unit_system } }, -- for when the server asks
    on_attach = on_attach,
  }
end

--- Starts the server for a buffer, or joins the one that runs for the same root folder.
function M.attach(buffer)
  local file = vim.api.nvim_buf_get_name(buffer)
  local root = root_of(file == "" and vim.fn.getcwd() .. "/unnamed.rig" or file)
  if vim.lsp.start then
    vim.lsp.start(client_settings(root), { bufnr = buffer })
    return
  end
  local id = clients[root]
  if id == nil or vim.lsp.get_client_by_id(id) == nil then
    id = vim.lsp.start_client(client_settings(root))
    clients[root] = id
  end
  if id then
    vim.lsp.buf_attach_client(buffer, id)
  end
end

function M.setup(options)
  config = vim.tbl_extend("force", defaults, options or {})
  vim.api.nvim_create_autocmd("FileType", {
    group = vim.api.nvim_create_augroup("riglang", { clear = true }),
    pattern = "rig",
    callback = function(event)
      M.attach(event.buf)
    end,
  })
end

return M
