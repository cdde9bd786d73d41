// What lib/domain must not touch: the clock, the dice, the machine. Time and randomness arrive as arguments.

const ENVIRONMENT = [
  ...["process", "crypto", "performance", "globalThis", "window", "self", "global", "document", "navigator"],
  ...["setTimeout", "setInterval", "setImmediate", "queueMicrotask", "fetch", "require", "Buffer", "console"],
];

const CLOCK_OF_DATE_FNS =
  /^(is(Future|Past|Today|Tomorrow|Yesterday|This[A-Z]\w*)|(start|end)Of(Today|Tomorrow|Yesterday)|formatDistanceToNow(Strict)?|constructNow)$/.source;

const reasons = {
  clock: "The domain has no clock: take the time as an argument.",
  dice: "The domain has no dice: take a seed or a generator as an argument.",
  locale: "The answer depends on the machine's language: name the locale, or compare with < and >.",
};

/** Rules for the files of lib/domain, as an ESLint rule set. */
export const domainRules = {
  "no-restricted-globals": [
    "error",
    ...ENVIRONMENT.map((name) => ({ name, message: "The domain is pure: it sees values, not the machine." })),
  ],
  "no-restricted-properties": [
    "error",
    { object: "Date", property: "now", message: reasons.clock },
    { object: "Math", property: "random", message: reasons.dice },
  ],
  "no-restricted-syntax": [
    "error",
    { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: reasons.clock },
    { selector: "CallExpression[callee.name='Date']", message: reasons.clock },
    { selector: "CallExpression[callee.property.name=/^toLocale/][arguments.length=0]", message: reasons.locale },
    { selector: "CallExpression[callee.property.name='localeCompare'][arguments.length<2]", message: reasons.locale },
  ],
  "@typescript-eslint/no-restricted-imports": [
    "error",
    { patterns: [{ regex: "^date-fns(/|$)", importNamePattern: CLOCK_OF_DATE_FNS, message: reasons.clock }] },
  ],
};
