import { type Metadata, type Viewport } from "next";
import { cookies } from "next/headers";
import { connection } from "next/server";
import { type ReactNode } from "react";
import "./ui/fonts.css";
import "./ui/tokens.css";
import "./ui/base.css";
import "./ui/print.css";
import { THEME_COOKIE, themeOf } from "./theme";

export const metadata: Metadata = {
  title: { default: "Halfpass", template: "%s · Halfpass" },
  description: "The back office of a lawn care crew.",
  robots: { index: false, follow: false },
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

/** The page around every page. It waits for a request because the script nonce belongs to one. */
export default async function RootLayout({ children }: { readonly children: ReactNode }) {
  await connection();
  const theme = themeOf((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <html lang="en-US" {...(theme === "system" ? {} : { "data-theme": theme })}>
      <body>{children}</body>
    </html>
  );
}
