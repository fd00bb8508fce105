import tseslint from 'typescript-eslint';

// Rules that find mistakes. Layout is prettier's business; boundaries between packages are tests/architecture.test.ts's.
export default tseslint.config(
  {
    ignores: [
      '**/node_modules/**',
      '**/dist/**',
      'out/**',
      'coverage/**',
      '.cache/**',
      'grammar/**/*.html',
      'packages/foods/data/**',
      'packages/*/media/**',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-non-null-assertion': 'error',
      eqeqeq: ['error', 'always'],
      'no-console': 'off',
      'no-eval': 'error',
      'no-implied-eval': 'error',
      'no-new-func': 'error',
      'no-debugger': 'error',
      'no-var': 'error',
      'prefer-const': 'error',
      'no-constant-binary-expression': 'error',
      'no-self-compare': 'error',
      'no-unmodified-loop-condition': 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'], location: 'start' }],
    },
  },
  {
    // The core prints nothing and knows no process: what it has to say it returns.
    files: ['packages/{text,quantity,syntax,compiler,foods,views,publish,ide}/src/**/*.ts'],
    ignores: ['**/*.test.ts'],
    rules: {
      'no-console': 'error',
      'no-restricted-globals': [
        'error',
        'process',
        'Buffer',
        '__dirname',
        'fetch',
        'setTimeout',
        'setInterval',
        'localStorage',
        'document',
        'window',
      ],
    },
  },
);
