import { LoadingState } from "#ui/loading-state";

export default function OfficeLoading() {
  return <LoadingState words="Reading" />;
}
