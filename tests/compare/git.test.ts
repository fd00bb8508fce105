import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { useCommand } from '../cli/command.js';
import { root } from '../sheet/recipes.js';
import { TestRepository } from './git-world.js';
import { edited } from './states.js';

const LOAF = `// the quay loaf
recipe Quay Bread
gives 1 loaf of 844 g

make dough
  500 g strong wheat flour
  350 g water
  10 g fine salt
  2 g instant yeast
  hands 10 min: Mix and knead until smooth.
  wait 2 h at 24 C: Leave to rise.
  oven 40 min at 230 C: Bake until brown.
  lose 18 g as water
`;

const command = useCommand('git');
const repository = (): TestRepository => new TestRepository(() => command.entry);

function setUp(): TestRepository {
  const repo = repository();
  repo.commit('the loaf', 'bread/loaf.quern', LOAF);
  const { code, err } = repo.quern('git-setup', '--yes');
  if (code !== 0) throw new Error(err);
  return repo;
}

describe('setting git up', () => {
  test('says what it will write, asks, and writes nothing without a yes', () => {
    const repo = repository();
    const before = repo.must('config', '--local', '--list');
    const refused = repo.answering('no\n', 'git-setup');
    expect(refused.code).toBe(1);
    expect(refused.out).toContain('set diff.quern.textconv to');
    expect(refused.out).toContain('Nothing was written.');
    const silent = repo.quern('git-setup');
    expect(silent.code).toBe(2);
    expect(silent.err).toContain('add --yes');
    expect(repo.must('config', '--local', '--list')).toBe(before);
    expect(repo.has('.git/hooks/pre-commit')).toBe(false);
    expect(repo.answering('yes\n', 'git-setup').code).toBe(0);
    expect(repo.has('.git/hooks/pre-commit')).toBe(true);
    expect(repo.quern('git-setup', '--yes').out).toContain('Everything is set up already.');
  });

  test('takes all of it away again, and leaves what stood there', () => {
    const repo = repository();
    repo.write('.git/hooks/pre-commit', '#!/bin/sh\necho own hook\n');
    repo.write('.git/info/attributes', '*.png binary\n');
    const before = repo.must('config', '--local', '--list');
    repo.quern('git-setup', '--yes');
    expect(repo.read('.git/info/attributes')).toBe('*.png binary\n*.quern diff=quern merge=quern\n');
    expect(repo.read('.git/hooks/pre-commit')).toContain('echo own hook');
    const undone = repo.quern('git-setup', '--undo', '--yes');
    expect(undone.code).toBe(0);
    expect(repo.must('config', '--local', '--list')).toBe(before);
    expect(repo.read('.git/info/attributes')).toBe('*.png binary\n');
    expect(repo.read('.git/hooks/pre-commit')).toBe('#!/bin/sh\necho own hook\n');
    expect(repo.has('.git/hooks/pre-merge-commit')).toBe(false);
    expect(repo.quern('git-setup', '--undo').out).toContain('There is nothing to take away.');
  });

  test('shares attributes when asked, and leaves hooks out when asked', () => {
    const repo = repository();
    repo.quern('git-setup', '--yes', '--shared', '--no-hooks');
    expect(repo.read('.gitattributes')).toBe('*.quern diff=quern merge=quern\n');
    expect(repo.has('.git/hooks/pre-commit')).toBe(false);
  });

  test('does not write into a hook that is no shell script', () => {
    const repo = repository();
    repo.write('.git/hooks/pre-commit', '#!/usr/bin/env python3\nprint(1)\n');
    const { code, err } = repo.quern('git-setup', '--yes');
    expect(code).toBe(2);
    expect(err).toContain('is no shell script');
    expect(repo.must('config', '--local', '--list')).not.toContain('quern');
  });

  test('tells that there is no repository', () => {
    const { code, err } = command.run(['git-setup', '--yes'], { in: '/' });
    expect(code).toBe(2);
    expect(err).toContain('lies in no git repository');
  });
});

describe('differences', () => {
  test('git diff tells what changed and what follows from it', () => {
    const repo = setUp();
    repo.write(
      'bread/loaf.quern',
      edited(LOAF, ['10 g fine', '11 g fine'], ['  350 g water\n', ''], ['  500 g', '  350 g water\n  500 g']),
    );
    const { out } = repo.git('diff');
    expect(out).toContain('bread/loaf.quern');
    // 10 and 11 g on 500 g of flour.
    expect(out).toContain('fine salt  10 g -> 11 g  +10 %; 2 % to 2.2 % on flour');
    expect(out).not.toContain('water');
    expect(out).not.toContain('@@');
  });

  test('git diff follows a renamed file, and tells new ones and those that are gone', () => {
    const repo = setUp();
    repo.must('mv', 'bread/loaf.quern', 'bread/quay.quern');
    repo.write('bread/quay.quern', edited(LOAF, ['40 min', '45 min']));
    repo.write('tea.quern', 'recipe Tea\n\nmake tea\n  1 kg water\n  hands 1 min: Steep.\n');
    repo.must('add', '--all');
    const { out } = repo.git('diff', '--cached', '--find-renames');
    expect(out).toContain('bread/loaf.quern -> bread/quay.quern');
    expect(out).toContain('40 min -> 45 min');
    expect(out).toContain('tea.quern (new)');
  });

  test('git log -p and git show compare accounts of what the lines come to', () => {
    const repo = setUp();
    repo.commit('saltier', 'bread/loaf.quern', edited(LOAF, ['10 g fine', '11 g fine']));
    for (const out of [repo.must('log', '-p', '-1'), repo.must('show')]) {
      expect(out).toContain('-  = salt on flour 2 %\n+  = salt on flour 2.2 %\n');
      expect(out).toContain('-  10 g fine salt   (2 % on flour)\n+  11 g fine salt   (2.2 % on flour)\n');
      expect(out).toContain('@@ make dough');
    }
    expect(repo.must('show', '--ext-diff')).toContain('2 % to 2.2 % on flour');
  });

  test('a line that only moved is no difference in an account', () => {
    const repo = setUp();
    repo.commit(
      'moved',
      'bread/loaf.quern',
      edited(LOAF, ['  350 g water\n', ''], ['  500 g', '  350 g water\n  500 g']),
    );
    expect(repo.must('show', '--format=')).not.toMatch(/^[+-] /m);
  });
});

describe('merges', () => {
  /** Two branches with a change each; gives what the merge of the second into the first said. */
  function branches(
    ours: string,
    theirs: string,
  ): { readonly repo: TestRepository; readonly code: number | null; readonly said: string } {
    const repo = setUp();
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.commit('theirs', 'bread/loaf.quern', theirs);
    repo.must('checkout', '--quiet', 'main');
    repo.commit('ours', 'bread/loaf.quern', ours);
    const { code, out, err } = repo.git('merge', '--no-edit', 'side');
    return { repo, code, said: out + err };
  }

  test('of neighbouring lines of one make', () => {
    const { repo, code } = branches(
      edited(LOAF, ['350 g water', '360 g water'], ['844 g', '854 g']),
      edited(LOAF, ['10 g fine salt', '10.5 g fine salt']),
    );
    expect(code).toBe(0);
    expect(repo.read('bread/loaf.quern')).toBe(
      edited(LOAF, ['350 g water', '360 g water'], ['844 g', '854 g'], ['10 g fine salt', '10.5 g fine salt']),
    );
    expect(repo.must('status', '--porcelain')).toBe('');
    // Git by itself takes neighbouring lines for a conflict.
    repo.quern('git-setup', '--undo', '--yes');
    repo.must('reset', '--quiet', '--hard', 'HEAD^1');
    expect(repo.git('merge', '--no-edit', 'side').code).not.toBe(0);
  });

  test('with a rename on one side', () => {
    const repo = setUp();
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.must('mv', 'bread/loaf.quern', 'bread/quay.quern');
    repo.commit('renamed', 'bread/quay.quern', edited(LOAF, ['10 g fine salt', '10.5 g fine salt']));
    repo.must('checkout', '--quiet', 'main');
    repo.commit('wetter', 'bread/loaf.quern', edited(LOAF, ['350 g water', '352 g water']));
    expect(repo.git('merge', '--no-edit', 'side').code).toBe(0);
    expect(repo.has('bread/loaf.quern')).toBe(false);
    expect(repo.read('bread/quay.quern')).toBe(
      edited(LOAF, ['10 g fine salt', '10.5 g fine salt'], ['350 g water', '352 g water']),
    );
  });

  test('a line that both changed is a conflict of that line alone', () => {
    const { repo, code, said } = branches(
      edited(LOAF, ['350 g water', '360 g water']),
      edited(LOAF, ['350 g water', '340 g water'], ['10 g fine', '11 g fine']),
    );
    expect(code).toBe(1);
    expect(said).toContain('CONFLICT');
    expect(repo.read('bread/loaf.quern')).toBe(
      edited(
        LOAF,
        ['  350 g water\n', '<<<<<<< ours\n  360 g water\n=======\n  340 g water\n>>>>>>> theirs\n'],
        ['10 g fine', '11 g fine'],
      ),
    );
    expect(repo.must('status', '--porcelain')).toContain('UU bread/loaf.quern');
  });

  test('in the style that git is told to show conflicts in', () => {
    const repo = setUp();
    repo.must('config', 'merge.conflictStyle', 'diff3');
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.commit('theirs', 'bread/loaf.quern', edited(LOAF, ['350 g water', '340 g water']));
    repo.must('checkout', '--quiet', 'main');
    repo.commit('ours', 'bread/loaf.quern', edited(LOAF, ['350 g water', '360 g water']));
    expect(repo.git('merge', '--no-edit', 'side').code).toBe(1);
    expect(repo.read('bread/loaf.quern')).toContain('  360 g water\n||||||| before both\n  350 g water\n=======\n');
  });

  test('where lines alone cannot tell, the conflict is git’s own', () => {
    const { repo, code } = branches(
      edited(LOAF, ['Leave to rise.\n', 'Leave to rise.\n  hands 2 min: Fold.\n']),
      edited(LOAF, ['Leave to rise.\n', 'Leave to rise.\n  hands 4 min: Shape a ball.\n']),
    );
    expect(code).toBe(1);
    const text = repo.read('bread/loaf.quern');
    expect(text).toMatch(/<<<<<<< ours\n[^]*Fold[^]*=======\n[^]*Shape a ball[^]*>>>>>>> theirs/);
  });

  test('lines that merge but no longer hold together are shown to somebody', () => {
    // 400 g on 500 g of flour are 80 %, 385 g on 550 g are 70 %; together it is 435 g on 550 g, which is neither.
    const checked = edited(
      LOAF,
      ['gives 1 loaf of 844 g\n', ''],
      ['  hands 10 min', '  check 70 % water on flour\n  hands 10 min'],
    );
    const repo = repository();
    repo.commit('the loaf', 'loaf.quern', checked);
    repo.quern('git-setup', '--yes');
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.commit('wetter', 'loaf.quern', edited(checked, ['350 g water', '400 g water'], ['check 70 %', 'check 80 %']));
    repo.must('checkout', '--quiet', 'main');
    repo.commit(
      'more flour',
      'loaf.quern',
      edited(checked, ['  350 g water\n', '  50 g whole rye flour\n  350 g water\n  35 g water\n']),
    );
    const { code, out, err } = repo.git('merge', '--no-edit', 'side');
    expect(code).toBe(1);
    expect(out + err).toContain('M14');
    expect(out + err).toContain('together they no longer hold');
    expect(repo.read('loaf.quern')).not.toContain('<<<<<<<');
  });

  test('of a file that both branches brought', () => {
    const repo = setUp();
    const tea = 'recipe Tea\n\nmake tea\n  1 kg water\n  hands 1 min: Steep.\n';
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.commit('tea', 'tea.quern', edited(tea, ['  hands', '  20 g sugar\n  hands']));
    repo.must('checkout', '--quiet', 'main');
    repo.commit('tea too', 'tea.quern', edited(tea, ['  hands', '  30 g lemon juice\n  hands']));
    expect(repo.git('merge', '--no-edit', 'side').code).toBe(0);
    expect(repo.read('tea.quern')).toBe(edited(tea, ['  hands', '  30 g lemon juice\n  20 g sugar\n  hands']));
  });
});

describe('the check before a commit', () => {
  test('stops what has errors, as it is staged', () => {
    const repo = setUp();
    repo.write('bread/loaf.quern', edited(LOAF, ['350 g water', '350 g water = cold']));
    repo.must('add', '--all');
    repo.write('bread/loaf.quern', LOAF);
    const { code, err } = repo.git('commit', '-m', 'broken');
    expect(code).not.toBe(0);
    expect(err).toMatch(/bread\/loaf\.quern:7: error L13/);
    expect(repo.git('commit', '-m', 'broken', '--no-verify').code).toBe(0);
  });

  test('lets pass what is well, whatever stands beside it', () => {
    const repo = setUp();
    repo.write('bread/loaf.quern', edited(LOAF, ['10 g fine', '10.2 g fine']));
    repo.must('add', '--all');
    repo.write('other.quern', 'recipe\n  nonsense\n');
    expect(repo.git('commit', '-m', 'well').code).toBe(0);
  });
});

describe('the steps for continuous integration in docs/git.md', () => {
  interface Workflow {
    readonly jobs: Readonly<Record<string, { readonly steps: readonly { readonly run?: string }[] }>>;
  }

  test('tell what a branch changed, and not what went on beside it', () => {
    const [, yaml = ''] = /```yaml\n([^]*?)```/.exec(readFileSync(join(root, 'docs', 'git.md'), 'utf8')) ?? [];
    const steps = Object.values((parse(yaml) as Workflow).jobs).flatMap((job) => job.steps);
    const step = steps.find(({ run }) => run?.includes('quern compare'))?.run ?? '';
    const repo = repository();
    repo.commit('the loaf', 'loaf.quern', LOAF);
    repo.must('checkout', '--quiet', '-b', 'side');
    repo.commit('saltier', 'loaf.quern', edited(LOAF, ['10 g fine', '11 g fine']));
    repo.must('update-ref', 'refs/remotes/origin/main', 'main');
    repo.must('checkout', '--quiet', 'main');
    repo.commit('beside it', 'loaf.quern', edited(LOAF, ['350 g water', '360 g water']));
    repo.must('update-ref', 'refs/remotes/origin/main', 'main');
    repo.must('checkout', '--quiet', 'side');
    const script = step.replace('npx quern', `'${process.execPath}' '${command.entry}'`);
    const { status, stderr } = spawnSync('sh', ['-ec', script], {
      cwd: repo.folder,
      env: { PATH: process.env['PATH'] ?? '', BASE_BRANCH: 'main' },
      encoding: 'utf8',
    });
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    expect(repo.read('comparison.md')).toContain('2 % to 2.2 % on flour');
    expect(repo.read('comparison.md')).not.toContain('| water |');
  });
});
