// The words round the explanations of the fields.

export const helpWords = {
  title: "What this field means",
  invitation: "Go to any number or word of the description: what it means is said here.",
  invitationHere: "Go to any field above: what it means is said here.",
} as const;
