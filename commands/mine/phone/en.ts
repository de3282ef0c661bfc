/* Names come harmless, the time marked. */

export const en = {
  own: (code: string, until: string) =>
    `**${code}** is your code until ${until}, for one use. On the other device open the page, press **I have been here before** and type it. Your film and your calls are there at once; this device stays signed in.`,
  given: (name: string, code: string, until: string) =>
    `**${code}** is the code for ${name} until ${until}, for one use. On the other device: **I have been here before**, then the code. Give it to nobody else: whoever types it is ${name}. Is a phone lost? Sign it out under **Menu**, **Door**.`,
  byAccount: "Here your account is your place: sign in to it on the other device, and the calls come there.",
  byPassphrase:
    "A teacher comes in with the passphrase: on the other device press **I teach or help here** and use the same name.",
  unknownPerson: (name: string) => `There is nobody called ${name} in this class.`,
  aboveYou: (name: string) => `Only a teacher may do that for ${name}.`,
};
export type PhoneWords = typeof en;
