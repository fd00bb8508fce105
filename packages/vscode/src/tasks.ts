import * as vscode from 'vscode';

interface QuernTask extends vscode.TaskDefinition {
  readonly command: string;
  readonly args?: readonly string[];
}

const OFFERED = [
  { command: 'check', title: 'check every recipe', group: vscode.TaskGroup.Test },
  { command: 'tidy', title: 'lay out every recipe', group: vscode.TaskGroup.Clean },
  { command: 'mend', title: 'mend what needs no decision', group: vscode.TaskGroup.Clean },
] as const;

/** Tasks that run the command line; what `check` says becomes problems of the editor. */
export class QuernTasks implements vscode.TaskProvider {
  provideTasks(): vscode.Task[] {
    return OFFERED.map(({ command, title, group }) => {
      const task = made({ type: 'quern', command }, title, vscode.TaskScope.Workspace);
      task.group = group;
      return task;
    });
  }

  resolveTask(task: vscode.Task): vscode.Task | undefined {
    const definition = task.definition as QuernTask;
    return typeof definition.command === 'string'
      ? made(definition, task.name, task.scope ?? vscode.TaskScope.Workspace)
      : undefined;
  }
}

function made(definition: QuernTask, title: string, scope: vscode.WorkspaceFolder | vscode.TaskScope): vscode.Task {
  const quern = vscode.workspace.getConfiguration('quern').get('command', 'quern');
  const execution = new vscode.ShellExecution(quern, [definition.command, ...(definition.args ?? [])]);
  const where = scope === vscode.TaskScope.Global ? vscode.TaskScope.Workspace : scope;
  return new vscode.Task(definition, where, title, 'quern', execution, '$quern');
}
