package words

import (
	"sync"

	"contralay/model/wirelist/name"
)

// Vocabulary is the headings by folded words. Words of English, German, French,
// Spanish, Italian and of those in languages.go as lists of builders use them; common practice, no source. Nothing writes it.
func Vocabulary() map[string]name.Meaning { return vocabulary() }

// vocabulary is made once: it holds a thousand words, and a small list is read in less than it takes to make.
var vocabulary = sync.OnceValue(func() map[string]name.Meaning {
	m := map[string]name.Meaning{}
	add := func(f name.Field, lang string, words ...string) {
		for _, w := range words {
			of := lang
			if old, taken := m[w]; taken && old.Field == f && old.Lang != lang {
				of = "" // several languages have it
			}
			m[w] = name.Meaning{Field: f, Lang: of, Weak: len(w) <= 2 && w != "to"}
		}
	}
	add(name.FieldWire, "", "wire", "ident", "wire id", "wire no", "wire number", "id", "circuit", "circuit no", "circuit number",
		"conductor",
		"conductor no", "core", "core no")
	add(name.FieldWire, "de", "ader", "adernummer", "ader nr", "aderbezeichnung", "leitung", "leitungsnummer", "leitung nr",
		"ltg nr", "ltg",
		"leitungs nr", "kabel nr", "draht", "drahtnummer", "kabelnummer")
	add(name.FieldWire, "fr", "fil", "numero de fil", "fil no", "numero fil", "n fil", "no fil", "repere", "rep", "rep fil")
	add(name.FieldWire, "es", "hilo", "numero de hilo", "hilo no", "numero de cable", "n cable", "no cable", "n hilo", "cable no",
		"num cable")
	add(name.FieldWire, "it", "filo", "numero filo", "filo no", "cavo", "numero cavo", "n filo", "n cavo", "no filo")
	add(name.FieldNumber, "", "no", "number", "item", "nr", "#", "num", "pos", "ref")
	add(name.FieldNumber, "de", "nummer", "lfd nr", "position", "lfd", "lfd no", "lfd nummer", "laufende nr", "laufende nummer", "lauf nr",
		"laufnummer")
	add(name.FieldNumber, "", "sr no", "sl no", "s no", "serial", "serial no", "lopnr", "lopnummer", "lopenr", "lopenummer", "lobenr",
		"lobenummer", "volgnummer", "nr crt", "r br", "rb", "zap st", "jarj nro", "№", "№ п п")
	add(name.FieldNumber, "fr", "numero", "nº", "n°")
	add(name.FieldNumber, "", "n")
	add(name.FieldFrom, "", "this end", "near end")
	add(name.FieldFrom, "", "from", "source", "src", "start", "origin", "end a", "end 1", "side a", "a side", "a end", "from connector",
		"from device",
		"source connector",
		"start point")
	add(name.FieldFrom, "de", "von", "quelle", "anfang", "von stecker", "startpunkt", "ausgangspunkt")
	add(name.FieldFrom, "fr", "depuis", "depart", "origine", "tenant")
	add(name.FieldFrom, "es", "desde", "origen")
	add(name.FieldFrom, "it", "da", "partenza", "provenienza")
	add(name.FieldFrom, "", "de")
	add(name.FieldTo, "", "to", "destination", "dest", "dst", "target", "end b", "end 2", "side b", "b side", "b end", "to connector",
		"to device",
		"destination connector", "goes to", "end point", "sink", "sink device")
	add(name.FieldTo, "de", "nach", "ziel", "nach stecker", "zielpunkt")
	add(name.FieldTo, "fr", "vers", "arrivee", "aboutissant")
	add(name.FieldTo, "es", "hasta", "hacia", "destino")
	add(name.FieldFrom, "", "from where", "where from")
	add(name.FieldTo, "", "where to", "to where", "where it goes", "connected device", "endpoint", "remote", "remote device", "remote end")
	add(name.FieldTo, "it", "verso", "arrivo", "destinazione")
	add(name.FieldTo, "", "a")
	add(name.FieldRun, "", "from to", "run", "from and to", "connection", "connections", "point to point", "route from to")
	add(name.FieldRun, "de", "von nach", "verbindung", "von bis")
	add(name.FieldRun, "fr", "de vers", "de a", "liaison", "connexion")
	add(name.FieldRun, "es", "desde hasta", "conexion")
	add(name.FieldRun, "it", "da a", "collegamento")
	add(name.FieldConnector, "", "connector", "conn", "connector name", "connector id", "device", "component", "plug", "plug name",
		"receptacle",
		"socket", "module", "unit")
	add(name.FieldConnector, "de", "stecker", "steckverbinder", "gerat", "bauteil")
	add(name.FieldConnector, "fr", "connecteur", "prise", "appareil")
	add(name.FieldConnector, "es", "conector", "aparato")
	add(name.FieldConnector, "it", "connettore", "dispositivo")
	add(name.FieldPin, "", "pin", "pin no", "pin number", "pin id", "cavity", "cavity no", "cav", "way", "contact", "terminal",
		"terminal no")
	add(name.FieldPin, "de", "stift", "kontakt", "kammer", "klemme", "anschluss", "polnummer", "kl", "klemme nr")
	add(name.FieldPin, "fr", "broche", "borne", "alveole", "voie")
	add(name.FieldPin, "es", "patilla", "clavija", "contacto", "via")
	add(name.FieldPin, "it", "piedino", "morsetto", "contatto", "polo")
	add(name.FieldFromPin, "", "from pin", "from cavity", "from terminal", "source pin", "start pin", "pin a", "pin 1")
	add(name.FieldToPin, "", "to pin", "to cavity", "to terminal", "destination pin", "dest pin", "end pin", "pin b", "pin 2")
	add(name.FieldToPin, "de", "gegenpin", "gegenklemme", "gegenkontakt")
	add(name.FieldSignal, "", "signal", "signal name", "sig name", "sig", "description", "desc", "function", "func", "fn", "fct",
		"assignment", "name", "service",
		"net", "net name",
		"circuit name",
		"label",
		"purpose", "pin name", "pin function", "wire name", "use", "for", "used for", "serves", "what")
	add(name.FieldSignal, "", "meaning", "signal meaning")
	add(name.FieldSignal, "de", "funktion", "bezeichnung", "beschreibung", "signalname", "benennung", "belegung", "potential")
	add(name.FieldSignal, "fr", "fonction", "designation", "nom")
	add(name.FieldSignal, "es", "senal", "funcion", "descripcion", "nombre")
	add(name.FieldSignal, "it", "segnale", "funzione", "descrizione", "nome", "utenza", "utilizzo")
	addValues(add)
	add(name.FieldContact, "", "contact size", "pin size", "socket size", "terminal size")
	add(name.FieldFrom, "", "enda", "end1", "sidea", "starts at", "start at", "starts", "begins", "begins at", "leaves from",
		"connects from", "start location", "between")
	add(name.FieldTo, "", "endb", "end2", "sideb", "ends", "ends at", "end at", "arrives at", "connects to", "connected to",
		"wired to", "runs to", "goes into", "geht an", "geht nach", "fuhrt zu", "fuhrt nach",
		"end location",
		"leads to", "to where", "finish", "finish point", "end", "wire to", "cable to",
		"leitung zu", "kabel zu", "other end", "far end", "that end", "opposite end", "mates with", "peer", "and",
		"gegenstelle", "gegenseite", "gegengerat", "verbunden mit",
		"feeds", "supplies", "powers", "speist", "versorgt", "alimente", "alimenta", "matar", "voedt", "zasila",
		"geht zu", "wohin", "relie a", "connecte a", "conectado a", "va a", "collegato a")
	for _, of := range []string{"ref", "reference", "designator", "component", "location", "node", "unit", "module", "block", "name",
		"item", "part"} {
		add(name.FieldFrom, "", "from "+of, "source "+of)
		add(name.FieldTo, "", "to "+of, "destination "+of, "dest "+of, "target "+of)
	}
	add(name.FieldSignal, "", "what it does", "what it is", "what it is for")
	add(name.FieldSignal, "", "measurement", "measurand", "messgrosse", "grandezza", "grandeur")
	add(name.FieldSignal, "", "line", "linie", "tag", "tag name", "tag no", "tag number", "tag #", "signal tag", "duty",
		"circuit description", "circuit function")
	add(name.FieldWire, "", "cable number", "lead", "lead no", "cct", "cct no", "ckt", "ckt no", "wire tag", "wire label", "ferrule",
		"wire marker", "w no", "w nr")
	for side, at := range map[string][2]name.Field{"a": {name.FieldFrom, name.FieldFromPin}, "1": {name.FieldFrom, name.FieldFromPin},
		"b": {name.FieldTo, name.FieldToPin}, "2": {name.FieldTo, name.FieldToPin}} {
		add(at[0], "", side+" end", "end "+side+" conn", "end "+side+" connector", "end "+side+" device", "side "+side+" conn",
			"side "+side+" connector", "side "+side+" device")
		add(at[1], "", "end "+side+" cav", "end "+side+" cavity", "end "+side+" pin", "end "+side+" terminal", "side "+side+" pin",
			"side "+side+" cavity", side+" end pin")
	}
	add(name.FieldPin, "", "pins", "ways", "cavities", "port", "port no", "port number", "channel", "gpio", "io pin", "pad",
		"solder pad", "screw", "clamp",
		"pol", "pol nr", "pole", "pole no", "polnr", "output", "output no",
		"output #", "ausgang", "sortie", "salida", "uscita", "uitgang", "utgang",
		"wyjscie", "saida")
	add(name.FieldPin, "", "kanal", "canale", "kanaal", "ch")
	add(name.FieldConnector, "", "board", "controller", "box", "housing", "header", "panel", "tag strip", "strip name", "strip no")
	further := func(f name.Field, lang string, words ...string) {
		for _, w := range words {
			if _, taken := m[w]; !taken { // a word of the five languages above stays theirs
				add(f, lang, w)
			}
		}
	}
	languages(further)
	furtherWords(further)
	endsBySide(further)
	printedWords(further)
	return m
})

// addValues adds the headings of what a wire is, and not of where it goes.
func addValues(add func(f name.Field, lang string, words ...string)) {
	add(name.FieldGauge, "", "gauge", "awg", "size", "wire size", "wire gauge", "csa", "cross section", "cross sectional area",
		"mm2", "section",
		"ga", "sq mm", "mm sq", "square mm", "sqmm", "wire sq mm")
	add(name.FieldGauge, "de", "querschnitt", "leiterquerschnitt", "aderquerschnitt")
	add(name.FieldGauge, "fr", "jauge", "section de fil")
	add(name.FieldGauge, "es", "seccion", "calibre")
	add(name.FieldGauge, "it", "sezione", "calibro")
	add(name.FieldSpec, "", "spec", "specification", "wire spec", "wire type", "type", "part number", "part no", "p/n", "pn",
		"wire part number",
		"material")
	add(name.FieldSpec, "de", "typ", "leitungstyp", "adertyp")
	add(name.FieldSpec, "fr", "type de fil", "type fil")
	add(name.FieldSpec, "es", "tipo", "tipo de cable")
	add(name.FieldColour, "", "colour", "color", "col", "wire colour", "wire color", "base colour", "base color", "primary colour",
		"primary color", "colour code", "color code")
	add(name.FieldColour, "de", "farbe", "aderfarbe", "leitungsfarbe", "farbcode", "grundfarbe")
	add(name.FieldColour, "fr", "couleur")
	add(name.FieldColour, "it", "colore")
	add(name.FieldStripe, "", "stripe", "tracer", "stripe colour", "stripe color", "tracer colour", "tracer color", "secondary colour",
		"secondary color")
	add(name.FieldStripe, "de", "kennfarbe", "streifen", "zweitfarbe")
	add(name.FieldLength, "", "length", "len", "wire length", "cut length")
	add(name.FieldLength, "de", "lange", "laenge", "leitungslange", "aderlange")
	add(name.FieldLength, "fr", "longueur", "long")
	add(name.FieldLength, "es", "longitud", "largo")
	add(name.FieldLength, "it", "lunghezza")
	add(name.FieldCurrent, "", "carico", "carga")
	add(name.FieldCurrent, "", "current", "amps", "amperage", "amp", "amperes", "max current", "load", "load current", "current draw", "ma")
	add(name.FieldCurrent, "de", "strom", "stromstarke", "last", "belastung")
	add(name.FieldCurrent, "fr", "courant", "intensite")
	add(name.FieldCurrent, "es", "corriente", "intensidad", "amperios")
	add(name.FieldCurrent, "it", "corrente")
	add(name.FieldFuse, "", "fuse", "fuse rating", "breaker", "protection", "circuit breaker")
	add(name.FieldFuse, "de", "sicherung", "absicherung")
	add(name.FieldFuse, "fr", "fusible")
	add(name.FieldFuse, "it", "fusibile")
	add(name.FieldNote, "", "note", "notes", "remark", "remarks", "comment", "comments", "status", "state", "info")
	add(name.FieldNote, "de", "bemerkung", "bemerkungen", "anmerkung", "anmerkungen", "hinweis", "notiz", "kommentar")
	add(name.FieldNote, "fr", "remarque", "remarques", "observation", "observations", "commentaire")
	add(name.FieldNote, "es", "nota", "notas", "observaciones", "comentario", "comentarios")
	add(name.FieldNote, "it", "osservazioni", "annotazioni", "commento")
	add(name.FieldCable, "", "cable", "cable id", "cable no", "pair", "group", "twist", "twisted with", "shield", "shield group",
		"bundle id", "multi", "multicore", "snake")
	add(name.FieldCable, "de", "kabel", "paar", "schirm", "verdrillt mit")
	add(name.FieldCable, "fr", "paire", "blindage", "torsade")
	add(name.FieldCable, "es", "manguera", "blindaje", "apantallado")
	add(name.FieldCable, "it", "cavo multipolare", "schermo")
	add(name.FieldCable, "", "pair with", "paar mit", "par con", "torsade avec", "trenzado con", "intrecciato con", "getwist met",
		"samen met", "paarung", "pairing", "appairage", "accoppiamento", "emparejado", "emparejamiento")
	add(name.FieldContact, "", "kontaktgrosse", "taille contact", "taille de contact", "tamano contacto", "tamano de contacto",
		"taglia contatto", "contactmaat")
	add(name.FieldSpec, "", "insulation", "leitungsart", "isolation", "tipo di filo", "tipo filo", "draadtype", "isolatie", "isolierung")
	add(name.FieldGauge, "", "qmm", "dikte")
	add(name.FieldSignal, "", "signal description", "signal function", "circuit use")
	add(name.FieldWire, "", "repere fil", "brin", "anima")
	add(name.FieldFuse, "", "fused", "fused at")
	add(name.FieldNote, "", "misc")
	add(name.FieldColour, "", "clr")
	add(name.FieldNumber, "", "ln", "seq", "seq no", "zeile", "volgnr", "regel", "riga", "fila", "ligne", "rang")
}
