package words

import "contralay/model/wirelist/name"

// printedWords are the headings of what is printed on the wire itself: it is what the wire is called. From memory, no source.
//
//	Colour | Printed on wire | Goes to
//	Red    | BILGE PUMP      | Pump
func printedWords(add func(f name.Field, lang string, words ...string)) {
	add(name.FieldSignal, "", "printed on wire", "printed on the wire", "printed on it", "printed on cable", "printed", "print",
		"print on wire", "printing", "printing on wire", "wire print", "wire printing", "wire imprint", "imprint",
		"marking on wire", "marking on the wire",
		"marked on wire", "text on wire", "text on the wire", "legend on wire", "wire legend", "wire text", "lettering", "stamped on wire",
		"hot stamp", "hot stamped")
	add(name.FieldSignal, "de", "aufdruck", "bedruckung", "aufdruck auf ader", "aufdruck auf leitung", "leitungsaufdruck", "aderaufdruck")
	add(name.FieldSignal, "fr", "inscription", "imprime sur le fil", "impression", "marquage du fil", "inscription sur le fil")
	add(name.FieldSignal, "es", "impreso en el cable", "impreso", "texto impreso", "inscripcion")
	add(name.FieldSignal, "it", "stampato sul filo", "stampa", "scritta", "scritta sul filo", "stampigliatura")
	add(name.FieldSignal, "", "opdruk", "bedrukking", "tryck", "trykt", "paatryk", "nadruk", "potisk", "impresso", "impresso no fio")
}
