package name

// Meaning is what one heading says.
type Meaning struct {
	Field Field
	Lang  string // the one language that has the word; "" where several do
	Weak  bool   // a word of one or two letters, which a cavity could be as well
}

// Vocabulary is the headings by folded words. Words of English, German, French,
// Spanish, Italian and of those in languages.go as lists of builders use them; common practice, no source.
func Vocabulary() map[string]Meaning {
	m := map[string]Meaning{}
	add := func(f Field, lang string, words ...string) {
		for _, w := range words {
			of := lang
			if old, taken := m[w]; taken && old.Field == f && old.Lang != lang {
				of = "" // several languages have it
			}
			m[w] = Meaning{f, of, len(w) <= 2 && w != "to"}
		}
	}
	add(FieldWire, "", "wire", "wire id", "wire no", "wire number", "id", "circuit", "circuit no", "circuit number", "conductor",
		"conductor no", "core", "core no")
	add(FieldWire, "de", "ader", "adernummer", "ader nr", "aderbezeichnung", "leitung", "leitungsnummer", "leitung nr", "ltg nr", "ltg",
		"leitungs nr", "kabel nr", "draht", "drahtnummer", "kabelnummer")
	add(FieldWire, "fr", "fil", "numero de fil", "fil no", "numero fil", "n fil", "no fil", "repere", "rep", "rep fil")
	add(FieldWire, "es", "hilo", "numero de hilo", "hilo no", "numero de cable", "n cable", "no cable", "n hilo", "cable no", "num cable")
	add(FieldWire, "it", "filo", "numero filo", "filo no", "cavo", "numero cavo", "n filo", "n cavo", "no filo")
	add(FieldNumber, "", "no", "number", "item", "nr", "#", "num", "pos", "ref")
	add(FieldNumber, "de", "nummer", "lfd nr", "position")
	add(FieldNumber, "fr", "numero")
	add(FieldFrom, "", "from", "source", "start", "origin", "end a", "end 1", "side a", "from connector", "from device", "source connector",
		"start point")
	add(FieldFrom, "de", "von", "quelle", "anfang", "von stecker", "startpunkt", "ausgangspunkt")
	add(FieldFrom, "fr", "depuis", "depart", "origine", "tenant")
	add(FieldFrom, "es", "desde", "origen")
	add(FieldFrom, "it", "da", "partenza", "provenienza")
	add(FieldFrom, "", "de")
	add(FieldTo, "", "to", "destination", "dest", "target", "end b", "end 2", "side b", "to connector", "to device",
		"destination connector", "goes to", "end point")
	add(FieldTo, "de", "nach", "ziel", "nach stecker", "zielpunkt")
	add(FieldTo, "fr", "vers", "arrivee", "aboutissant")
	add(FieldTo, "es", "hasta", "hacia", "destino")
	add(FieldTo, "it", "verso", "arrivo", "destinazione")
	add(FieldTo, "", "a")
	add(FieldRun, "", "from to", "run", "from and to", "connection", "connections", "point to point", "route from to")
	add(FieldRun, "de", "von nach", "verbindung", "von bis")
	add(FieldRun, "fr", "de vers", "de a", "liaison", "connexion")
	add(FieldRun, "es", "desde hasta", "conexion")
	add(FieldRun, "it", "da a", "collegamento")
	add(FieldConnector, "", "connector", "conn", "connector name", "connector id", "device", "component", "plug", "plug name", "receptacle",
		"socket", "module", "unit")
	add(FieldConnector, "de", "stecker", "steckverbinder", "gerat", "bauteil")
	add(FieldConnector, "fr", "connecteur", "prise", "appareil")
	add(FieldConnector, "es", "conector", "aparato")
	add(FieldConnector, "it", "connettore", "dispositivo")
	add(FieldPin, "", "pin", "pin no", "pin number", "pin id", "cavity", "cavity no", "cav", "way", "contact", "terminal", "terminal no")
	add(FieldPin, "de", "stift", "kontakt", "kammer", "klemme", "anschluss", "polnummer", "kl", "klemme nr")
	add(FieldPin, "fr", "broche", "borne", "alveole", "voie")
	add(FieldPin, "es", "patilla", "clavija", "contacto", "via")
	add(FieldPin, "it", "piedino", "morsetto", "contatto", "polo")
	add(FieldFromPin, "", "from pin", "from cavity", "from terminal", "source pin", "start pin", "pin a", "pin 1")
	add(FieldToPin, "", "to pin", "to cavity", "to terminal", "destination pin", "dest pin", "end pin", "pin b", "pin 2")
	add(FieldSignal, "", "signal", "signal name", "description", "desc", "function", "name", "net", "net name", "circuit name", "label",
		"purpose", "pin name", "pin function", "wire name", "use", "for", "used for", "serves", "what")
	add(FieldSignal, "de", "funktion", "bezeichnung", "beschreibung", "signalname", "benennung", "belegung", "potential")
	add(FieldSignal, "fr", "fonction", "designation", "nom")
	add(FieldSignal, "es", "senal", "funcion", "descripcion", "nombre")
	add(FieldSignal, "it", "segnale", "funzione", "descrizione", "nome")
	addValues(add)
	add(FieldContact, "", "contact size", "pin size", "socket size", "terminal size")
	add(FieldFrom, "", "enda", "end1", "sidea", "starts at", "start at", "starts", "begins", "begins at", "leaves from",
		"connects from", "start location", "between")
	add(FieldTo, "", "endb", "end2", "sideb", "ends", "ends at", "end at", "arrives at", "connects to", "connected to", "wired to",
		"end location",
		"leads to", "to where", "finish", "finish point", "end", "wire to", "cable to",
		"leitung zu", "kabel zu", "other end", "far end", "opposite end", "mates with", "peer", "and",
		"gegenstelle", "gegenseite", "verbunden mit",
		"geht zu", "wohin", "relie a", "connecte a", "conectado a", "va a", "collegato a")
	for _, of := range []string{"ref", "reference", "designator", "component", "location", "node", "unit", "module", "block", "name",
		"item", "part"} {
		add(FieldFrom, "", "from "+of, "source "+of)
		add(FieldTo, "", "to "+of, "destination "+of, "dest "+of, "target "+of)
	}
	add(FieldSignal, "", "tag", "tag name", "signal tag", "circuit description", "circuit function")
	add(FieldWire, "", "cable number", "lead", "lead no", "wire tag", "wire label", "ferrule", "wire marker")
	add(FieldPin, "", "pins", "port", "port no", "port number", "channel", "gpio", "io pin", "pad", "solder pad", "screw", "clamp",
		"pol", "pol nr", "pole", "pole no", "polnr")
	add(FieldConnector, "", "board", "controller", "box", "housing", "header", "panel")
	languages(func(f Field, lang string, words ...string) {
		for _, w := range words {
			if _, taken := m[w]; !taken { // a word of the five languages above stays theirs
				add(f, lang, w)
			}
		}
	})
	return m
}

// addValues adds the headings of what a wire is, and not of where it goes.
func addValues(add func(f Field, lang string, words ...string)) {
	add(FieldGauge, "", "gauge", "awg", "size", "wire size", "wire gauge", "csa", "cross section", "cross sectional area", "mm2", "section",
		"ga")
	add(FieldGauge, "de", "querschnitt", "leiterquerschnitt", "aderquerschnitt")
	add(FieldGauge, "fr", "jauge", "section de fil")
	add(FieldGauge, "es", "seccion", "calibre")
	add(FieldGauge, "it", "sezione", "calibro")
	add(FieldSpec, "", "spec", "specification", "wire spec", "wire type", "type", "part number", "part no", "p/n", "pn", "wire part number",
		"material")
	add(FieldSpec, "de", "typ", "leitungstyp", "adertyp")
	add(FieldSpec, "fr", "type de fil", "type fil")
	add(FieldSpec, "es", "tipo", "tipo de cable")
	add(FieldColour, "", "colour", "color", "col", "wire colour", "wire color", "base colour", "base color", "primary colour",
		"primary color", "colour code", "color code")
	add(FieldColour, "de", "farbe", "aderfarbe", "leitungsfarbe", "farbcode", "grundfarbe")
	add(FieldColour, "fr", "couleur")
	add(FieldColour, "it", "colore")
	add(FieldStripe, "", "stripe", "tracer", "stripe colour", "stripe color", "tracer colour", "tracer color", "secondary colour",
		"secondary color")
	add(FieldStripe, "de", "kennfarbe", "streifen", "zweitfarbe")
	add(FieldLength, "", "length", "len", "wire length", "cut length")
	add(FieldLength, "de", "lange", "laenge", "leitungslange", "aderlange")
	add(FieldLength, "fr", "longueur")
	add(FieldLength, "es", "longitud", "largo")
	add(FieldLength, "it", "lunghezza")
	add(FieldCurrent, "", "current", "amps", "amperage", "amp", "amperes", "max current", "load", "load current", "current draw", "ma")
	add(FieldCurrent, "de", "strom", "stromstarke", "last", "belastung")
	add(FieldCurrent, "fr", "courant", "intensite")
	add(FieldCurrent, "es", "corriente", "intensidad", "amperios")
	add(FieldCurrent, "it", "corrente")
	add(FieldFuse, "", "fuse", "fuse rating", "breaker", "protection", "circuit breaker")
	add(FieldFuse, "de", "sicherung", "absicherung")
	add(FieldFuse, "fr", "fusible")
	add(FieldFuse, "it", "fusibile")
	add(FieldNote, "", "note", "notes", "remark", "remarks", "comment", "comments", "status", "state", "info")
	add(FieldNote, "de", "bemerkung", "bemerkungen", "anmerkung", "anmerkungen", "hinweis", "notiz", "kommentar")
	add(FieldNote, "fr", "remarque", "remarques", "observation", "observations", "commentaire")
	add(FieldNote, "es", "nota", "notas", "observaciones", "comentario", "comentarios")
	add(FieldNote, "it", "osservazioni", "annotazioni", "commento")
	add(FieldCable, "", "cable", "cable id", "cable no", "pair", "group", "twist", "twisted with", "shield", "shield group", "bundle id")
	add(FieldCable, "de", "kabel", "paar", "schirm", "verdrillt mit")
	add(FieldCable, "fr", "paire", "blindage", "torsade")
}
