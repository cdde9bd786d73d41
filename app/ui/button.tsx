import Link from "next/link";
import { type ComponentProps, type ReactNode } from "react";
import styles from "./button.module.css";

/**
 * `act` is the one filled button of a screen; everything else is outlined. There is no red button: what destroys is
 * said in words and asked back.
 */
export type ButtonKind = "act" | "plain";

interface ButtonLook {
  readonly kind?: ButtonKind;
  /** A second line in small letters: what the press will do, or what is missing. */
  readonly second?: ReactNode;
  /** The bottom button of a phone screen: 72 px, the full width, the largest words. */
  readonly foot?: boolean;
}

export interface ButtonProps extends ButtonLook, Omit<ComponentProps<"button">, "className" | "style"> {
  /** Set while the press is being worked on: the words to show meanwhile, for instance "Writing". */
  readonly pendingWords?: string | undefined;
}

/** A button. Its type is "button" unless said otherwise. */
export function Button({ kind = "plain", second, foot = false, pendingWords, children, ...rest }: ButtonProps) {
  const pending = pendingWords !== undefined;
  return (
    <button
      type="button"
      {...rest}
      className={styles.button}
      data-kind={kind}
      data-foot={foot || undefined}
      data-pending={pending || undefined}
      aria-disabled={pending || rest["aria-disabled"]}
    >
      <ButtonWords second={second}>{pending ? `${pendingWords}\u2026` : children}</ButtonWords>
    </button>
  );
}

export interface LinkButtonProps extends ButtonLook {
  readonly href: string;
  /** True for a file or a paper, which the browser must fetch itself. */
  readonly document?: boolean;
  readonly children: ReactNode;
}

/** A link that looks like a button: it goes somewhere and changes nothing. */
export function LinkButton({ kind = "plain", second, foot = false, href, document = false, children }: LinkButtonProps) {
  const look = { className: styles.button, "data-kind": kind, "data-foot": foot || undefined, href };
  const words = <ButtonWords second={second}>{children}</ButtonWords>;
  if (document) return <a {...look}>{words}</a>;
  return (
    <Link {...look} prefetch={false}>
      {words}
    </Link>
  );
}

/** The one or two lines of a button; BlockedButton uses it too. */
export function ButtonWords({ second, children }: { readonly second?: ReactNode; readonly children: ReactNode }) {
  return (
    <>
      <span className={styles.first}>{children}</span>
      {second !== undefined && <span className={styles.second}>{second}</span>}
    </>
  );
}
