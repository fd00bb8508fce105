-- Neovim as a real client: opens a recipe, and writes what it sees as JSON.
local folder = os.getenv('QUERN_FOLDER')
local server = os.getenv('QUERN_SERVER')
local node = os.getenv('QUERN_NODE')
local seen = { diagnostics = {}, hover = '', completion = {}, renamed = '', formatted = '', cleared = false }

local function text(buffer)
  return table.concat(vim.api.nvim_buf_get_lines(buffer, 0, -1, false), '\n')
end

local function await(what, holds)
  if not vim.wait(15000, holds, 20) then
    io.stderr:write('waited in vain for ' .. what .. '\n')
    vim.cmd('cquit')
  end
end

vim.cmd('edit ' .. folder .. '/loaf.quern')
local buffer = vim.api.nvim_get_current_buf()
local client_id = vim.lsp.start_client({
  name = 'quern',
  cmd = { node, server, '--stdio' },
  root_dir = folder,
  workspace_folders = { { uri = vim.uri_from_fname(folder), name = 'recipes' } },
})
vim.lsp.buf_attach_client(buffer, client_id)
await('the server', function()
  local client = vim.lsp.get_client_by_id(client_id)
  return client ~= nil and client.server_capabilities ~= nil and client.initialized
end)

local function request(method, params)
  local answers = vim.lsp.buf_request_sync(buffer, method, params, 15000)
  local answer = answers and answers[client_id]
  if answer == nil or answer.err then
    io.stderr:write(method .. ': ' .. vim.inspect(answer) .. '\n')
    vim.cmd('cquit')
  end
  return answer.result
end

local function at(line, character)
  return { textDocument = { uri = vim.uri_from_bufnr(buffer) }, position = { line = line, character = character } }
end

await('a message', function() return #vim.diagnostic.get(buffer) > 0 end)
for _, one in ipairs(vim.diagnostic.get(buffer)) do
  table.insert(seen.diagnostics, { code = one.code, line = one.lnum, column = one.col, message = one.message })
end

seen.hover = request('textDocument/hover', at(8, 7)).contents.value

vim.api.nvim_buf_set_lines(buffer, 10, 10, false, { '  20 g strong wh' })
for _, item in ipairs(request('textDocument/completion', at(10, 16)).items) do
  table.insert(seen.completion, item.label)
end
vim.api.nvim_buf_set_lines(buffer, 10, 11, false, {})

local rename = at(8, 7)
rename.newName = 'levain'
vim.lsp.util.apply_workspace_edit(request('textDocument/rename', rename), 'utf-16')
seen.renamed = text(buffer)

vim.lsp.util.apply_text_edits(
  request('textDocument/formatting', {
    textDocument = { uri = vim.uri_from_bufnr(buffer) },
    options = { tabSize = 2, insertSpaces = true },
  }),
  buffer,
  'utf-16'
)
seen.formatted = text(buffer)

vim.api.nvim_buf_set_lines(buffer, 5, 6, false, { '  hands 3 min: Stir.' })
await('the message to go', function() return #vim.diagnostic.get(buffer) == 0 end)
seen.cleared = true

local out = io.open(folder .. '/seen.json', 'w')
out:write(vim.json and vim.json.encode(seen) or vim.fn.json_encode(seen))
out:close()
vim.cmd('qall!')
