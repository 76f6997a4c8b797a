package name

import "strings"

// languages adds the headings of lists in further languages. A row is a language, a field, and its words
// without marks on their letters, as table.Fold writes them. From memory, no source.
//
// A shop whose language or whose word is not here says it in a recipe, [columns] "Zyla" = "wire".
func languages(add func(f Field, lang string, words ...string)) {
	for _, row := range [][3]string{
		{"pl", "wire", "przewod|nr przewodu|numer przewodu|zyla"},
		{"pl", "from", "od|skad|poczatek"}, {"pl", "to", "do|dokad|koniec"},
		{"pl", "pin", "styk|nr styku|zacisk|nozka"}, {"pl", "connector", "zlacze|wtyczka|wtyk|urzadzenie"},
		{"pl", "signal", "sygnal|funkcja|opis|nazwa|przeznaczenie"}, {"pl", "gauge", "przekroj"}, {"pl", "colour", "kolor|barwa"},
		{"pl", "length", "dlugosc"}, {"pl", "current", "prad"}, {"pl", "fuse", "bezpiecznik"}, {"pl", "note", "uwagi|uwaga"},
		{"nl", "wire", "draad|draadnummer|ader nr"}, {"nl", "from", "van"}, {"nl", "to", "naar"},
		{"nl", "pin", "aansluiting|klem"}, {"nl", "connector", "stekker|apparaat"}, {"nl", "signal", "functie|omschrijving|signaal|naam"},
		{"nl", "gauge", "doorsnede|draaddoorsnede"}, {"nl", "colour", "kleur|draadkleur"}, {"nl", "length", "lengte"},
		{"nl", "current", "stroom"}, {"nl", "fuse", "zekering"}, {"nl", "note", "opmerking|opmerkingen"},
		{"cs", "wire", "vodic|cislo vodice|drat"}, {"cs", "from", "z|odkud"}, {"cs", "to", "kam"},
		{"cs", "pin", "vyvod|svorka|kontakt c"}, {"cs", "connector", "konektor|zarizeni"}, {"cs", "signal", "funkce|popis|nazev"},
		{"cs", "gauge", "prurez"}, {"cs", "colour", "barva"}, {"cs", "length", "delka"}, {"cs", "current", "proud"},
		{"cs", "fuse", "pojistka"}, {"cs", "note", "poznamka|poznamky"},
		{"sv", "wire", "ledning|ledare|kabelnr|ledningsnummer"}, {"sv", "from", "fran"}, {"sv", "to", "till"},
		{"sv", "pin", "stift|plint"}, {"sv", "connector", "kontaktdon|kontakt"}, {"sv", "signal", "funktion|beskrivning|namn"},
		{"sv", "gauge", "area|ledararea"}, {"sv", "colour", "farg"}, {"sv", "length", "langd"}, {"sv", "current", "strom"},
		{"sv", "fuse", "sakring"}, {"sv", "note", "anmarkning|kommentar"},
		{"da", "from", "fra"}, {"da", "to", "til"}, {"da", "colour", "farve|farge"}, {"da", "gauge", "tverrsnitt|tvaersnit"},
		{"da", "length", "laengde|lengde"}, {"da", "fuse", "sikring"}, {"da", "signal", "beskrivelse|navn|funksjon"},
		{"da", "note", "merknad|bemaerkning"}, {"da", "wire", "leder|ledningsnr"},
		{"pt", "wire", "fio|numero do fio|condutor"}, {"pt", "from", "origem"}, {"pt", "to", "para"}, {"pt", "pin", "pino|terminal no"},
		{"pt", "connector", "ficha|dispositivo"}, {"pt", "signal", "funcao|descricao|sinal|nome"}, {"pt", "gauge", "seccao|bitola|secao"},
		{"pt", "colour", "cor"}, {"pt", "length", "comprimento"}, {"pt", "current", "corrente"}, {"pt", "fuse", "fusivel"},
		{"pt", "note", "observacoes|obs"},
		{"fi", "wire", "johdin|johto"}, {"fi", "from", "mista|lahto"}, {"fi", "to", "mihin|kohde"}, {"fi", "pin", "nasta|napa"},
		{"fi", "connector", "liitin"}, {"fi", "signal", "toiminto|kuvaus|nimi"}, {"fi", "gauge", "poikkipinta"}, {"fi", "colour", "vari"},
		{"fi", "length", "pituus"}, {"fi", "fuse", "sulake"}, {"fi", "note", "huomautus|huom"},
		{"hu", "wire", "vezetek"}, {"hu", "from", "honnan"}, {"hu", "to", "hova"}, {"hu", "pin", "labszam|erintkezo"},
		{"hu", "connector", "csatlakozo"}, {"hu", "signal", "funkcio|leiras|megnevezes"}, {"hu", "gauge", "keresztmetszet"},
		{"hu", "colour", "szin"}, {"hu", "length", "hossz"}, {"hu", "fuse", "biztositek"}, {"hu", "note", "megjegyzes"},
		{"tr", "wire", "kablo no|tel|tel no"}, {"tr", "from", "nereden|baslangic"}, {"tr", "to", "nereye|bitis"},
		{"tr", "connector", "konnektor|soket"}, {"tr", "signal", "islev|aciklama|sinyal"}, {"tr", "gauge", "kesit"}, {"tr", "colour",
			"renk"},
		{"tr", "length", "uzunluk"}, {"tr", "fuse", "sigorta"}, {"tr", "note", "notlar"},
		{"ro", "wire", "fir|nr fir"}, {"ro", "from", "de la"}, {"ro", "to", "la"}, {"ro", "signal", "functie|descriere|semnal"},
		{"ro", "gauge", "sectiune"}, {"ro", "colour", "culoare"}, {"ro", "length", "lungime"}, {"ro", "note", "observatii"},
		{"ru", "wire", "провод|номер провода"}, {"ru", "from", "откуда|от"}, {"ru", "to", "куда|до"},
		{"ru", "pin", "контакт|вывод|пин"}, {"ru", "connector", "разъем|разъём|соединитель"},
		{"ru", "signal", "сигнал|назначение|функция|цепь|название"}, {"ru", "gauge", "сечение"}, {"ru", "colour", "цвет"},
		{"ru", "length", "длина"}, {"ru", "current", "ток"}, {"ru", "fuse", "предохранитель"}, {"ru", "note", "примечание|примечания"},
	} {
		add(Field(row[1]), row[0], strings.Split(row[2], "|")...)
	}
}
