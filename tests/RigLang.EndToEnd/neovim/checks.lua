-- A few checks in a row, printed as the Test Anything Protocol has it.
local M = {}
local passed, failed = 0, 0
local patience = 30000

local function say(text)
  io.stdout:write(text, "\n")
end

--- Runs one check; an error in it is a failure with its text.
function M.check(name, body)
  local ok, problem = xpcall(body, debug.traceback)
  if ok then
    passed = passed + 1
    say(string.format("ok %d - %s", passed + failed, name))
  else
    failed = failed + 1
    say(string.format("not ok %d - %s", passed + failed, name))
    say("  " .. tostring(problem):gsub("\n", "\n  "))
  end
end

--- Lets Neovim work until the condition holds and gives its value; an error that says what was waited for when it never does.
function M.eventually(what, condition)
  local value
  vim.wait(patience, function()
    value = condition()
    return value
  end, 10)
  if not value then
    error("waited in vain for " .. what() .. "\n" .. vim.inspect(vim.diagnostic.get(0)), 2)
  end
  return value
end

function M.equal(expected, actual)
  if not vim.deep_equal(expected, actual) then
    error("expected " .. vim.inspect(expected) .. ", got " .. vim.inspect(actual), 2)
  end
end

function M.contains(text, part)
  if not text:find(part, 1, true) then
    error("expected " .. vim.inspect(part) .. " in:\n" .. text, 2)
  end
end

--- Prints the counts and leaves Neovim.
function M.finish()
  say(string.format("1..%d\n# pass %d\n# fail %d", passed + failed, passed, failed))
  io.stdout:flush()
  vim.cmd(failed == 0 and "qall!" or "cquit 1")
end

return M
