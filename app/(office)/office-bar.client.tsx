"use client";

import Link from "next/link";
import { usePathname } from "next/navigation";
import { type Place, TopBar } from "#ui/top-bar";

/** The top bar, which knows from the address in which place one is. */
export function OfficeBar({ places }: { readonly places: readonly Place[] }) {
  const pathname = usePathname();
  const current = places.find((place) => pathname === place.href || pathname.startsWith(`${place.href}/`));
  return (
    <TopBar
      brand="Halfpass"
      homeHref="/"
      places={places}
      {...(current === undefined ? {} : { currentHref: current.href })}
      contentsHref="/contents"
      ends={
        <>
          <Link href="/worksheets" prefetch={false} aria-current={pathname.startsWith("/worksheets") ? "page" : undefined}>
            Worksheets
          </Link>
          <Link href="/settings" prefetch={false}>
            Settings
          </Link>
        </>
      }
    />
  );
}
