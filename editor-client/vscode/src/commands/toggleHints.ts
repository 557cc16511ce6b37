import { change, hintsShown } from "../settings";

export async function toggleHints(): Promise<void> {
  await change("hints", !hintsShown());
}
