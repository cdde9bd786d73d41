import { type NextConfig } from "next";

const config: NextConfig = {
  output: "standalone",
  poweredByHeader: false,
  reactStrictMode: true,
  serverExternalPackages: ["pdfkit", "@node-rs/argon2"],
  // Types are checked by `npm test`, whole and apart; a start installs no test tools and could not check the tests.
  typescript: { ignoreBuildErrors: true },
  // The launcher and the tests build and start by themselves; nothing is asked of a person on the way.
  devIndicators: false,
};

export default config;
