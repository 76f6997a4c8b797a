package signoff

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Below the wires of a sheet that went with a job stands what was tested and what the job took:
//
//	Wire | From    | To     | Colour
//	1    | Board 1 | Lamp 1 | red
//
//	Tested    | OK
//	Labour    | 6.5 h
//	Mileage   | 40 km | £18.00
//	Fitted by | Jan

// saysWork reports whether a row says nothing but what was tested, done or charged: a word for that first, and behind it only what such a
// word leads to. The word alone says nothing, as "Test" and "Time" are names of nets as well.
func saysWork(r table.Row, filled int, folded string) bool {
	const most = 4 // cells: the word, how much, what one costs, the sum (no source)
	if filled < 2 || filled > most {
		return false
	}
	words := strings.TrimRight(folded, " .:")
	if by, ok := cutLast(words); ok && isBy(by) {
		words = strings.TrimSpace(strings.TrimSuffix(words, by))
		return isTestWord(words) && filled <= 3 && onlyNames(r, filled > 2)
	}
	tested, charged := isTestWord(words), isChargeWord(words)
	if !tested && !charged {
		return filled == 2 && isPersonWord(words) && onlyNames(r, false)
	}
	first := true
	for _, c := range r.Cells {
		switch f := strings.Trim(table.Fold(c), " "); {
		case c == "":
		case first:
			first = false
		case tested && (isVerdict(f) || isDay(f)), charged && (IsWorth(f) || isReading(words) && isBareNumber(f)):
		default:
			return false
		}
	}
	return true
}

// cutLast is the last of several words.
func cutLast(words string) (last string, ok bool) {
	at := strings.LastIndexByte(words, ' ')
	return words[at+1:], at > 0
}

// isBy reports whether a word leads to who did something.
func isBy(w string) bool {
	return slices.Contains([]string{"by", "von", "durch", "par", "por", "da", "door", "av", "af"}, w)
}

// onlyNames reports whether what stands behind the first cell of a row is the name of a person, and a day where one may stand there.
func onlyNames(r table.Row, day bool) bool {
	first, named := true, false
	for _, c := range r.Cells {
		switch {
		case c == "":
		case first:
			first = false
		case day && isDay(c):
		case named || strings.ContainsAny(c, "0123456789:/") || value.NamesColour(c):
			return false
		default:
			named = true
		}
	}
	return named
}

// isPersonWord reports whether folded words say who did the work, or whom it was for, and are no device. Common words, no source.
func isPersonWord(words string) bool {
	switch words {
	case "mechanic", "technician", "electrician", "customer", "owner", "signature", "prufer", "monteur", "mechaniker", "elektriker",
		"kunde",
		"kundin", "auftraggeber", "unterschrift", "technicien", "mecanicien", "electricien", "tecnico", "meccanico", "elettricista",
		"cliente",
		"firma", "klant", "mecanico", "electricista", "mekaniker", "kund", "podpis", "zakaznik":
		return true
	}
	return false
}

// isTestWord reports whether folded words say that the work was tested or done. Common words, no source.
func isTestWord(words string) bool {
	switch words {
	case "test", "tests", "tested", "test result", "result", "check", "checked", "checks", "inspected", "inspection", "continuity",
		"continuity test", "insulation test", "function test", "functional test", "bench test", "road test", "meter", "meter test",
		"pull test", "ring out", "rung out", "signed off", "built", "made", "wired", "fitted", "installed", "crimped", "assembled",
		"passed",
		"getestet", "test bestanden", "gepruft", "geprueft", "prufung", "durchgang", "durchgangsprufung", "funktionstest", "probelauf",
		"probefahrt", "abnahme", "ergebnis", "montiert", "gebaut", "eingebaut", "verdrahtet",
		"teste", "essai", "essais", "essaye", "controle", "verifie", "verification", "resultat", "monte", "cable",
		"probado", "prueba", "pruebas", "comprobado", "revisado", "resultado", "montado",
		"collaudo", "collaudato", "prova", "provato", "verificato", "esito", "risultato", "montato", "cablato",
		"getest", "gekeurd", "gecontroleerd", "proefrit", "gemonteerd", "testad", "testat", "provad", "kontrollerad", "testet",
		"kontrolleret",
		"kontrollert", "testado", "verificado", "sprawdzono", "przetestowano", "proba", "zkouska", "vyzkouseno", "testattu", "koestettu":
		return true
	}
	return false
}

// isChargeWord reports whether folded words say what a job took or cost. Common words, no source.
func isChargeWord(words string) bool {
	words = strings.ReplaceAll(words, "œ", "oe")
	switch words {
	case "labour", "labor", "labour time", "labor time", "labour hours", "labor hours", "hours", "hrs", "man hours", "work time",
		"working time",
		"time", "time taken", "time spent", "bench time", "travel", "travel time", "mileage", "call-out", "callout", "call out", "parts",
		"materials", "material", "consumables", "price", "cost", "costs", "charge", "vat", "tax", "invoice", "quote", "quoted",
		"odometer",
		"to pay", "balance", "deposit",
		"arbeitszeit", "arbeit", "arbeitslohn", "arbeitsstunden", "lohn", "stunden", "std", "zeit", "zeitaufwand", "aufwand", "anfahrt",
		"fahrtkosten", "fahrzeit", "kleinmaterial", "preis", "kosten", "mwst", "km-stand", "kilometerstand", "rechnung",
		"rechnungsbetrag",
		"main d'oeuvre", "main d’oeuvre", "main-d'oeuvre", "heures", "temps", "duree", "deplacement", "fournitures", "prix", "cout",
		"tva",
		"facture", "kilometrage",
		"mano de obra", "horas", "tiempo", "desplazamiento", "materiales", "precio", "coste", "costo", "iva", "factura", "kilometraje",
		"manodopera", "ore", "tempo", "trasferta", "materiali", "prezzo", "fattura", "chilometraggio",
		"uren", "arbeid", "arbeidsloon", "arbeidstijd", "tijd", "reistijd", "reiskosten", "voorrijkosten", "prijs", "kosten excl", "btw",
		"arbete", "arbetstid", "tid", "timmar", "timer", "arbejdstid", "arbeidstid", "pris", "moms", "korsel", "mao de obra", "preco",
		"custo",
		"robocizna", "czas", "czas pracy", "godziny", "dojazd", "cena", "koszt", "prace", "cas", "hodiny", "doprava", "tyo", "tyoaika",
		"tunnit",
		"hinta":
		return true
	}
	return false
}

// isVerdict reports whether a folded text is how a test came out. Common words, no source.
func isVerdict(f string) bool {
	switch strings.Trim(f, " .!") {
	case "ok", "o.k", "okay", "all ok", "pass", "passed", "all pass", "good", "all good", "yes", "done", "fail", "failed", "x", "✓", "✔",
		"i.o", "io", "n.i.o", "in ordnung", "bestanden", "gut", "ja", "erledigt", "bon", "bonne", "conforme", "oui", "fait", "bien",
		"correcto",
		"hecho", "si", "sim", "buono", "positivo", "fatto", "superato", "goed", "gedaan", "godkand", "godkendt", "godkjent", "bra", "tak",
		"dobrze", "pozytywny", "v poradku", "ano", "kunnossa", "kylla":
		return true
	}
	return false
}

// IsWorth reports whether a folded text is a number with hours, a way driven or money behind or before it, "6.5 h", "£18.00", "40 km".
func IsWorth(f string) bool {
	number := strings.Trim(f, "abcdefghijklmnopqrstuvwxyz€£$. ")
	if number == "" || strings.Trim(number, "0123456789.,:/'- ") != "" {
		return false
	}
	at := strings.Index(f, number)
	before, behind := strings.Trim(f[:at], " ."), strings.Trim(f[at+len(number):], " .")
	return before == "" && isWorthUnit(behind) || isWorthUnit(before) && (behind == "" || behind == "-")
}

// isReading reports whether folded words lead to a number that nobody gives a unit: no wire is called so. Common words, no source.
func isReading(words string) bool {
	switch words {
	case "odometer", "mileage", "labour", "labor", "labour hours", "labor hours", "man hours", "invoice", "km-stand", "kilometerstand",
		"rechnung",
		"arbeitszeit", "arbeitsstunden", "main d'oeuvre", "kilometrage", "mano de obra", "kilometraje", "manodopera", "chilometraggio",
		"arbeidsloon", "arbeidstijd", "arbetstid", "arbejdstid", "arbeidstid", "robocizna":
		return true
	}
	return false
}

// isBareNumber reports whether a text is a number and nothing else.
func isBareNumber(f string) bool { return strings.Trim(f, "0123456789., ") == "" }

// isWorthUnit reports whether a folded word is a unit of time, of a way driven, or of money.
func isWorthUnit(w string) bool {
	switch w {
	case "h", "hr", "hrs", "hour", "hours", "min", "mins", "minutes", "day", "days", "std", "stunden", "stunde", "tage", "heure",
		"heures",
		"jours", "hora", "horas", "ore", "ora", "uur", "uren", "tim", "timmar", "timer", "godz", "hod", "tuntia",
		"km", "mi", "mile", "miles", "€", "eur", "euro", "£", "gbp", "$", "usd", "chf", "fr", "sek", "nok", "dkk", "kr", "zl", "pln",
		"kc", "czk",
		"huf":
		return true
	}
	return false
}
