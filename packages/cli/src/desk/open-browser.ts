import { spawn } from 'node:child_process';

/** Programs by which systems open an address in the reader's browser. */
const OPENERS: Readonly<Record<string, readonly string[]>> = {
  darwin: ['open'],
  win32: ['rundll32', 'url.dll,FileProtocolHandler'],
};

/** Opens an address in the browser; `failed` is called when the system has no way to. */
export function openBrowser(address: string, failed: () => void): void {
  const [program = 'xdg-open', ...first] = OPENERS[process.platform] ?? [];
  const child = spawn(program, [...first, address], { stdio: 'ignore', detached: true });
  child.on('error', failed);
  child.unref();
}
