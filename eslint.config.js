import js from '@eslint/js';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

/** Pure libraries take time, ids and randomness as arguments; they never reach for them. */
const pure = {
  files: ['libs/{trade,genealogy,evidence,statistics}/src/**/*.ts'],
  rules: {
    'no-restricted-globals': ['error', 'process', 'console', 'fetch', 'setTimeout', 'setInterval', 'performance'],
    'no-restricted-properties': [
      'error',
      { object: 'Date', property: 'now', message: 'Pure libraries take time as an argument.' },
      { object: 'Math', property: 'random', message: 'Pure libraries take randomness as an argument.' },
      { object: 'crypto', property: 'randomUUID', message: 'Pure libraries take ids as arguments.' },
    ],
    'no-restricted-syntax': [
      'error',
      { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: 'Take time as an argument.' },
      { selector: 'AwaitExpression', message: 'Pure libraries do no I/O.' },
    ],
  },
};

export default tseslint.config(
  { ignores: ['**/dist/**', 'node_modules/**', '.data/**', 'coverage/**'] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      'no-console': 'error',
      eqeqeq: 'error',
    },
  },
  {
    files: ['**/*.{ts,tsx}'],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-misused-promises': 'error',
      '@typescript-eslint/await-thenable': 'error',
    },
  },
  {
    files: ['**/*.{js,mjs,cjs}'],
    languageOptions: {
      globals: {
        process: 'readonly',
        console: 'readonly',
        module: 'writable',
        require: 'readonly',
        __filename: 'readonly',
        URL: 'readonly',
        setTimeout: 'readonly',
        fetch: 'readonly',
        performance: 'readonly',
      },
    },
  },
  { files: ['apps/web/src/**/*.{ts,tsx}'], ...reactHooks.configs.flat.recommended },
  { files: ['**/*.cjs'], rules: { '@typescript-eslint/no-require-imports': 'off' } },
  { files: ['tests/**', 'apps/service/start.mjs', 'apps/service/src/main.ts'], rules: { 'no-console': 'off' } },
  pure,
);
