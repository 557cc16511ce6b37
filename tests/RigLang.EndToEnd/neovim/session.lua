-- A user's session: open an example, break a line, read what is wrong, mend it, ask for the values.
package.path = vim.env.RIGLANG_TEST .. "/?.lua;" .. package.path
local checks = require("checks")
local check, eventually, equal, contains = checks.check, checks.eventually, checks.equal, checks.contains

local vehicle_file = "people-carrier/1-van.rig"
local rig_file = "people-carrier/6-rigs.rig"
local errors_only = { severity = vim.diagnostic.severity.ERROR }

local published = 0
vim.api.nvim_create_autocmd("DiagnosticChanged", {
  callback = function()
    published = published + 1
  end,
})

--- The number (from 0) and the text of the first line that holds `text`.
local function line_with(text)
  for number, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, false)) do
    if line:find(text, 1, true) then
      return number - 1, line
    end
  end
  error("no line with " .. text)
end

local function replace_line(number, text)
  vim.api.nvim_buf_set_lines(0, number, number + 1, true, { text })
end

local function float_text()
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    if vim.api.nvim_win_get_config(window).relative ~= "" then
      return table.concat(vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false), "\n")
    end
  end
end

check("a .rig file is known, and the server comes to it", function()
  vim.cmd("edit " .. vehicle_file)
  equal("rig", vim.bo.filetype)
  eventually(function()
    return "the server"
  end, function()
    local _, client = next(vim.lsp.buf_get_clients(0))
    return client and client.initialized
  end)
end)

check("an example has no errors", function()
  eventually(function()
    return "a first set of diagnostics"
  end, function()
    return published > 0
  end)
  equal({}, vim.diagnostic.get(0, errors_only))
end)

local number, good = line_with("    wheelbase ")
local bad = good:gsub("(%d) m", "%1 kg")

check("a mass in place of a length is marked where it stands", function()
  replace_line(number, bad)
  local found = eventually(function()
    return "an error"
  end, function()
    return vim.diagnostic.get(0, errors_only)[1]
  end)
  equal(number, found.lnum)
  equal(bad:match("()kg") - 1, found.col)
  contains(found.message, "length")
end)

check("the mended line is clean", function()
  replace_line(number, good)
  eventually(function()
    return "the error to go"
  end, function()
    return #vim.diagnostic.get(0, errors_only) == 0
  end)
end)

check("keywords, names and comments are coloured", function()
  local function group_at(line, column)
    return vim.fn.synIDattr(vim.fn.synID(line + 1, column + 1, 1), "name")
  end
  equal("rigKeyword", group_at(number, good:find("w") - 1))
  equal("rigNumber", group_at(number, good:find("%d") - 1))
  local opening = line_with("vehicle van")
  equal("rigOpening", group_at(opening, 0))
  equal("rigName", group_at(opening, #"vehicle "))
end)

check("K shows the computed load in a float", function()
  vim.cmd("edit " .. rig_file)
  eventually(function()
    return "the server"
  end, function()
    return next(vim.lsp.buf_get_clients(0))
  end)
  local rig = line_with("rig coast ")
  vim.api.nvim_win_set_cursor(0, { rig + 1, 5 })
  vim.api.nvim_feedkeys("K", "xt", false)
  local text = eventually(function()
    return "a float"
  end, float_text)
  -- The file expects 1180 kg ± 15 kg of itself.
  local load = tonumber(text:match("Axle front%s+(%d+) kg%s+of 1350 kg"))
  if not load or load < 1165 or load > 1195 then
    error("no load of the front axle of 1165 to 1195 kg in:\n" .. text)
  end
end)

--- The whole buffer of a file, whether it is in the window or not.
local function text_of(file)
  return table.concat(vim.api.nvim_buf_get_lines(vim.fn.bufnr(file), 0, -1, false), "\n")
end

check("gd goes to the declaration in the other file", function()
  local vehicle = line_with("    vehicle ")
  vim.api.nvim_win_set_cursor(0, { vehicle + 1, #"    vehicle                 v" })
  vim.api.nvim_feedkeys("gd", "xt", false)
  eventually(function()
    return "the other file"
  end, function()
    return vim.api.nvim_buf_get_name(0):find(vehicle_file, 1, true)
  end)
  equal("vehicle van", vim.api.nvim_get_current_line():match("^vehicle van"))
end)

check("completion offers the facts that fit", function()
  local wheelbase = line_with("    wheelbase ")
  vim.api.nvim_buf_set_lines(0, wheelbase, wheelbase, true, { "    roof" })
  vim.api.nvim_win_set_cursor(0, { wheelbase + 1, 8 })
  -- What <C-x><C-o> asks, without its menu: first where the word begins, then the words.
  local offered = eventually(function()
    return "completions"
  end, function()
    local answers = vim.lsp.buf_request_sync(0, "textDocument/completion", vim.lsp.util.make_position_params(), 1000)
    local _, answer = next(answers or {})
    return answer and answer.result and vim.lsp.util.text_document_completion_list_to_complete_items(answer.result, "roof")
  end)
  local words = vim.tbl_map(function(item)
    return item.word
  end, offered)
  contains(table.concat(words, "\n"), "roof-rating")
  vim.api.nvim_buf_set_lines(0, wheelbase, wheelbase + 1, true, {})
end)

check("a fix is chosen, and applied by Neovim itself", function()
  local wheelbase, line = line_with("    wheelbase ")
  replace_line(wheelbase, (line:gsub("wheelbase", "wheelbse")))
  eventually(function()
    return "an error"
  end, function()
    return vim.diagnostic.get(0, errors_only)[1]
  end)
  vim.api.nvim_win_set_cursor(0, { wheelbase + 1, 6 })
  local select = vim.ui.select
  vim.ui.select = function(items, _, choose)
    for index, item in ipairs(items) do
      if item[2].title:find("`wheelbase`", 1, true) then
        return choose(item, index)
      end
    end
    choose(nil)
  end
  vim.lsp.buf.code_action()
  eventually(function()
    return "the line to be mended"
  end, function()
    return vim.api.nvim_buf_get_lines(0, wheelbase, wheelbase + 1, true)[1]:find("    wheelbase ", 1, true)
  end)
  vim.ui.select = select
  eventually(function()
    return "the error to go"
  end, function()
    return #vim.diagnostic.get(0, errors_only) == 0
  end)
end)

check("formatting takes stray blanks away", function()
  local before = text_of(vehicle_file)
  local wheelbase, line = line_with("    wheelbase ")
  replace_line(wheelbase, line .. "   ")
  vim.lsp.buf.formatting_sync({}, 10000)
  equal(before, text_of(vehicle_file))
end)

check("a rename reaches the files that are open and those that aren't", function()
  vim.cmd("edit " .. rig_file)
  local rig = line_with("rig coast ")
  vim.api.nvim_win_set_cursor(0, { rig + 1, 5 })
  vim.lsp.buf.rename("shore")
  eventually(function()
    return "the new name"
  end, function()
    return text_of(rig_file):find("\nrig shore ", 1, true)
  end)
  contains(text_of(rig_file), "rig coast-full like shore")
  contains(text_of("people-carrier/trips/saddle.rig"), "shore")
end)

--- The text of the window whose first line is `heading`.
local function window_with(heading)
  for _, window in ipairs(vim.api.nvim_list_wins()) do
    local lines = vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(window), 0, -1, false)
    if lines[1] == heading then
      return table.concat(lines, "\n")
    end
  end
end

check("the report of a rig opens beside it", function()
  vim.api.nvim_win_set_cursor(0, { line_with("rig shore ") + 2, 0 })
  vim.cmd("RigReport")
  local text = eventually(function()
    return "the report"
  end, function()
    return window_with("# rig shore")
  end)
  contains(text, "Front axle load")
  equal("markdown", vim.bo.filetype)
  vim.cmd("close")
end)

check("the verdict above a rig is told, and opens the report", function()
  vim.lsp.codelens.refresh()
  local lens = eventually(function()
    return "a verdict"
  end, function()
    local _, found = next(vim.lsp.codelens.get(0))
    return found and found.command and found
  end)
  contains(lens.command.title, "Within all")
  vim.api.nvim_win_set_cursor(0, { lens.range.start.line + 1, 0 })
  vim.lsp.codelens.run()
  eventually(function()
    return "the report"
  end, function()
    return window_with("# " .. lens.command.arguments[2])
  end)
end)

checks.finish()
