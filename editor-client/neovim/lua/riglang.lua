-- Starts the RigLang server for rig files: require("riglang").setup{}. Works from Neovim 0.7 on.
local M = {}

local defaults = {
  cmd = { "riglang", "lsp" },
  -- The units of computed values: "asWritten" (those of the file's author), "metric" or "us".
  unit_system = "asWritten",
  -- The practice of rigs that name none ("common-na", "common-eu" or one of your own), and how serious findings are shown: { ["tongue-below-usual"] = "note" }.
  practice = nil,
  severity = nil,
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

local function server_settings()
  return { unitSystem = config.unit_system, practice = config.practice, severity = config.severity }
end

local function client_settings(root)
  return {
    name = "riglang",
    cmd = config.cmd,
    root_dir = root,
    workspace_folders = { { uri = vim.uri_from_fname(root), name = root } },
    init_options = server_settings(),
    settings = { riglang = server_settings() }, -- for when the server asks
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

--- The declaration that a line (from 1) stands in, as the server calls it; nil where that is nothing to report on.
local function subject_at(line)
  for number = line, 1, -1 do
    local text = vim.fn.getline(number)
    if text:match("^[^%s#]") then
      local kind, name = text:match("^(%l+)%s+([^%s#]+)")
      return vim.tbl_contains({ "rig", "trip", "weighing", "run" }, kind) and kind .. " " .. name or nil
    end
  end
end

local function show_report(text)
  vim.cmd("botright vnew")
  local buffer = vim.api.nvim_get_current_buf()
  vim.api.nvim_buf_set_lines(buffer, 0, -1, true, vim.split(text, "\n"))
  vim.bo[buffer].buftype = "nofile"
  vim.bo[buffer].bufhidden = "wipe"
  vim.bo[buffer].filetype = "markdown"
  vim.bo[buffer].modifiable = false
end

--- Shows the report of a document, or of one declaration in it, in a window of its own.
local function report(uri, subject)
  vim.lsp.buf_request(0, "riglang/report", { textDocument = { uri = uri }, subject = subject }, function(problem, answer)
    if problem then
      vim.notify(problem.message, vim.log.levels.ERROR)
    else
      show_report(answer.text)
    end
  end)
end

--- Shows the report of the rig, trip, weighing or run that the cursor stands in, else of the whole file.
function M.report()
  report(vim.uri_from_bufnr(0), subject_at(vim.fn.line(".")))
end

-- A click on the verdict above a rig: vim.lsp.codelens.run().
vim.lsp.commands["riglang.openReport"] = function(command)
  report(command.arguments[1], command.arguments[2])
end

function M.setup(options)
  config = vim.tbl_extend("force", defaults, options or {})
  vim.api.nvim_create_autocmd("FileType", {
    group = vim.api.nvim_create_augroup("riglang", { clear = true }),
    pattern = "rig",
    callback = function(event)
      vim.api.nvim_buf_create_user_command(event.buf, "RigReport", M.report, { desc = "Show the report of what the cursor stands in" })
      M.attach(event.buf)
    end,
  })
end

return M
