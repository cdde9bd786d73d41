// caught by: @next/next/no-img-element, jsx-a11y/alt-text, react/jsx-key
export default function Page() {
  return [1, 2].map((each) => <img src={`/${each}.png`} />);
}
