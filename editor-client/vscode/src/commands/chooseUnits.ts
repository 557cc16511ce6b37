import { window } from "vscode";
import { change, unitSystem, type UnitSystem } from "../settings";

const choices: readonly { readonly value: UnitSystem; readonly label: string; readonly detail: string }[] = [
  { value: "asWritten", label: "As written", detail: "The units that the author of the file used" },
  { value: "metric", label: "Metric", detail: "Kilograms, metres, kilometres" },
  { value: "us", label: "US", detail: "Pounds, feet and inches, miles" },
];

export async function chooseUnits(): Promise<void> {
  const now = unitSystem();
  const picked = await window.showQuickPick(
    choices.map((choice) => ({ ...choice, ...(choice.value === now ? { description: "in use" } : {}) })),
    { title: "Units of computed values", placeHolder: "What is written in a file stays as it is" },
  );
  if (picked !== undefined) {
    await change("unitSystem", picked.value);
  }
}
