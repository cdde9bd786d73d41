import { type NextConfig } from "next";

const config: NextConfig = {
  output: "standalone",
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ["pdfkit", "@node-rs/argon2"],
  // Papers read their letters from these files while the server runs; no import leads to them.
  outputFileTracingIncludes: {
    "/*": [
      "node_modules/@fontsource/atkinson-hyperlegible-next/files/*-{latin,latin-ext}-{400,600,700}-normal.woff",
      "node_modules/@fontsource/atkinson-hyperlegible-mono/files/*-{latin,latin-ext}-600-normal.woff",
      "node_modules/@fontsource/source-serif-4/files/*-{latin,latin-ext}-400-normal.woff",
    ],
  },
  // Types are checked by `npm test`, whole and apart; a start installs no test tools and could not check the tests.
  typescript: { ignoreBuildErrors: true },
  // The launcher and the tests build and start by themselves; nothing is asked of a person on the way.
  devIndicators: false,
};

export default config;
