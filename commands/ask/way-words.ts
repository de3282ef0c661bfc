/*
 * Words by which people ask for a command, or look for its form, that its summary doesn't hold; English and German side by side,
 * as in lexicon.ts.
 */

export const WAY_WORDS: Readonly<Record<string, string>> = {
  "sheet add": "add film films new times hinzufügen hinzu füge neuen film filme zeiten eintragen trage",
  "sheet import": "import table pdf copy einlesen tabelle",
  "sheet move": "change times percent ändern prozent",
  "tank add": "add tank tanks new register hinzufügen hinzu füge trage dose dosen eintragen neue",
  "tank remove": "remove tank delete dose entfernen löschen",
  "class say": "tell everyone everybody announce message write all sage sagen allen alle bescheid durchsage",
  "class role": "make someone aide assistant teacher promote mache jemanden hilfskraft lehrkraft rolle",
  "class periods": "set bell bells lesson timetable schedule stelle klingel stundenplan kurszeiten",
  "class setup": "change rename name zone class settings umbenennen einstellungen kurs",
  "class forget": "remove student delete person forget entferne entfernen schüler schülerin löschen lösche",
  "class phone": "student lost phone new device handy verloren neues gerät schülerin schüler",
  "class report": "report print statistics term bericht drucken drucke auswertung halbjahr",
  "class turns": "bell order enough time reihenfolge klingel alle",
  "class erase": "delete class remove kurs löschen lösche",
  "class firstday": "everything ready tonight prepare alles bereit vorbereiten abend",
  "class board": "late behind everyone overview spät zurück übersicht alle",
  "class mend": "broken damaged unreadable kaputt unlesbar beschädigt",
  "roll export":
    "export log save download spreadsheet print printout druck ausdrucken exportiere exportieren filmbuch speichern tabelle",
  "roll find": "films wrong search went fault suchen filme schiefgegangen fehler welche",
  "roll rate": "rate rating stars score bewerte bewerten note sterne",
  "roll note": "note write remark notiz schreiben aufschreiben",
  "roll photo": "add photo picture upload scan foto bild hochladen",
  "run stop": "stop cancel student run abbrechen breche lauf schülers",
  "run next": "press student drücken drücke schüler",
  "run correct":
    "late earlier forgot poured before pressed too early wrong time zu spät früher vergessen eingegossen gedrückt früh falsche zeit",
  "mine language": "language english german change switch sprache deutsch englisch ändere ändern umstellen",
  "mine phone": "move device computer phone another gerät handy wechseln anderes anderen",
  "mine export": "my data export daten",
  "mine erase": "delete me my data lösch mich meine daten",
  "mix class": "mix rolls films need ansetzen filme brauche heute abend",
  "mix dilute": "dilute concentrate water verdünnen konzentrat",
  "batch mix":
    "mixed made new fixer developer bottle add enter angesetzt neue neuen neues flasche fixierer fixierbad entwickler trage eintragen",
  "batch discard": "throw threw thrown dumped wegkippen weggekippt weggeschüttet entsorgt",
  "batch restock": "bought new packs shelf gekauft packung",
  "batch handover": "collected silver disposal hand over abgeben abgegeben sammelstelle",
};

/** Words of asking, and of every other sentence. */
export const PLAIN_WORDS =
  "how work works use what where which when who that this there have does can could will would should want need please from with about your mine them then into over wie was wo welche wann wer das der die den dem ein eine einen einer ich mir mich man kann soll muss bitte mit von aus fur auf und oder ist sind wird einem meinen meine";
