import tseslint from 'typescript-eslint'

export default tseslint.config(
  { ignores: ['dist/', 'coverage/', 'node_modules/', 'src/client/schema.d.ts'] },
  ...tseslint.configs.strictTypeChecked,
  {
    files: ['**/*.ts'],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
      '@typescript-eslint/require-await': 'off', // Fastify plugins are async by contract
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/no-unnecessary-type-parameters': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off', // overflows on the recursive types of graphql
      'complexity': ['error', 14],
      'max-depth': ['error', 3],
      'max-params': ['error', 5],
      'max-lines': ['error', { max: 250, skipBlankLines: true }],
      'max-lines-per-function': ['error', { max: 60, skipBlankLines: true }],
      'eqeqeq': 'error',
      'no-console': 'error',
    },
  },
  { files: ['tests/**/*.ts'], rules: { 'max-lines-per-function': 'off', 'max-lines': 'off' } },
  { files: ['**/*.js'], ...tseslint.configs.disableTypeChecked },
)
