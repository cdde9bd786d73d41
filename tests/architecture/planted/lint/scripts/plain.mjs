// caught by: @typescript-eslint/no-floating-promises, no-undef
export const start = async () => { await Promise.resolve(); };
start();
console.log("a script may speak");
export const missing = neverDefined;
