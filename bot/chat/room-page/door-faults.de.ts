import type { DoorFaultWords } from "./door-faults.en.ts";

export const doorFaults: DoorFaultWords = {
  ERR_CODE: "Diesen Code hat kein Kurs. Sieh noch einmal hin: sechs Buchstaben und Ziffern.",
  ERR_NAME: "Schreib einen Namen aus Buchstaben und Ziffern eines Alphabets, höchstens 40.",
  ERR_NAME_TAKEN:
    "Diesen Namen oder einen, der so aussieht, hat schon jemand. Bist du das, dann komm mit deinem eigenen Code zurück: Dein altes Gerät zeigt ihn, oder eine Hilfskraft gibt ihn dir. Sonst nimm einen anderen Namen.",
  ERR_NAME_ROLE: "So heißen hier Lehrkräfte und Hilfskräfte. Schreib deinen eigenen Namen.",
  ERR_PASSPHRASE:
    "Das ist nicht das Kennwort dieses Kurses. Groß und klein und Striche sind gleich; die Zeichen zählen.",
  ERR_RETURN_CODE: "Dieser Code öffnet nichts: Er gilt einmal, zehn Minuten lang. Hol dir einen neuen.",
  ERR_BY_PASSPHRASE: "Eine Lehrkraft kommt mit dem Kennwort und demselben Namen herein.",
  ERR_RUN_OPEN: "Ein Film läuft noch. Melde dieses Gerät unter Menü ab.",
  ERR_DISK:
    "Der Rechner des Kurses kann nichts aufschreiben: Sein Speicher ist voll. Es wurde nichts geändert. Sag deiner Lehrkraft Bescheid.",
  ERR_LOCKED: "Dieses Gerät ist gesperrt. Frag deine Lehrkraft.",
  ERR_TOO_OFTEN:
    "Von hier kamen zu viele falsche Versuche. Warte eine Minute, dann versuch es wieder; mit jedem weiteren falschen wartest du länger.",
  ERR_NO_DEMO: "Der erfundene Kurs ist für andere Rechner nicht offen. Nimm einen Kurscode.",
  ERR_ORIGIN:
    "Diese Seite wurde auf einem Weg geöffnet, dem der Raum nicht traut. Tippe die Adresse von Hand.",
  ERR_HOST: "Auf diese Adresse hört der Raum nicht. Frag nach der richtigen.",
  ERR_SIGNED_OUT: "Du bist abgemeldet. Komm noch einmal herein.",
  ERR_FORBIDDEN: "Das darf nur die Lehrkraft oder eine Hilfskraft.",
  ERR_NOT_UNDERSTOOD: "Das hat der Raum nicht verstanden. Lade die Seite neu.",
  ERR_NOT_FOUND: "Das gibt es hier nicht mehr.",
  ERR_BROKE: "Auf dem Rechner des Kurses ist ein Fehler aufgetreten. Versuch es noch einmal.",
  ERR_UNREACHABLE: "Der Rechner des Kurses antwortet nicht. Bist du im Netz der Schule?",
};
