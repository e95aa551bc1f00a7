import reactHooks from "eslint-plugin-react-hooks";
import tseslint from "typescript-eslint";

const named = "Export by name: a default export has a different name at every import.";

export default tseslint.config(
  { ignores: ["dist/", "node_modules/", ".cache/", "test-results/", "playwright-report/", "public/"] },
  {
    files: ["**/*.{ts,tsx}"],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { projectService: true } },
    linterOptions: { reportUnusedDisableDirectives: "error" },
    rules: {
      eqeqeq: "error",
      "no-var": "error",
      "prefer-const": "error",
      "no-implied-eval": "error",
      "no-eval": "error",
      "no-new-func": "error",
      "no-self-compare": "error",
      "no-constant-condition": ["error", { checkLoops: "allExceptWhileTrue" }],
      "@typescript-eslint/no-explicit-any": "error",
      "@typescript-eslint/no-unused-vars": ["error", { argsIgnorePattern: "^_", varsIgnorePattern: "^_" }],
      "@typescript-eslint/consistent-type-imports": ["error", { prefer: "type-imports", disallowTypeAnnotations: false }],
      "@typescript-eslint/no-import-type-side-effects": "error",
      "@typescript-eslint/switch-exhaustiveness-check": ["error", { considerDefaultExhaustiveForUnions: true }],
      "@typescript-eslint/restrict-template-expressions": ["error", { allowNumber: true, allowBoolean: true }],
    },
  },
  {
    files: ["src/**/*.{ts,tsx}"],
    rules: {
      "no-console": "error",
      "max-lines": ["error", { max: 400, skipBlankLines: false, skipComments: false }],
      "no-restricted-syntax": ["error", { selector: "ExportDefaultDeclaration", message: named }],
      "no-warning-comments": ["error", { terms: ["todo", "fixme", "xxx"], location: "anywhere" }],
      "@typescript-eslint/no-non-null-assertion": "error",
    },
  },
  {
    files: ["src/app/**/*.{ts,tsx}", "tests/app/**/*.{ts,tsx}"],
    plugins: { "react-hooks": reactHooks },
    rules: { "react-hooks/rules-of-hooks": "error", "react-hooks/exhaustive-deps": "error" },
  },
  {
    files: ["tests/**/*.{ts,tsx}"],
    rules: { "no-restricted-properties": ["error", ...["describe", "it", "test"].flatMap((object) => ["skip", "only", "todo"].map((property) => ({ object, property })))] },
  },
);
