package name

import (
	"slices"
	"strconv"
	"strings"

	"contralay/model/catalogue"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/stripname"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/titleline"
	"contralay/model/wirelist/value"
)

// Title is what the rows above a pin table say about its connector.
type Title struct {
	Name    string // "" where they do not name it
	Row     int
	Insert  string // a name of the catalogue
	Unknown string // what looks like an insert and is none of the catalogue
	Gender  string // pin | socket
	Counts  []Count
	Paper   string      // heading above that of the connector: of the whole paper
	Other   []string    // what is not understood
	Remarks []table.Row // lines that say nothing of it
	Rivals  []string    // of these what could be the name as well
	Spoken  bool        // the name stands within a sentence
	Within  string      // what its line says that it stands in
}

// Count is a number that a title states.
type Count struct {
	Row  int
	Of   string // contacts | plugs | wires | cavities
	N    int
	Text string
}

// ReadTitle reads the rows above a table: counts, insert and gender, and the name. A
// row that says "connector" is the name before any other; then the last heading that
// is more than an insert, as those above it are of the whole paper; then the first row
// that begins with a designator, "J1 - ECU"; then the first row at all, of those that no
// empty row parts from the table.
func ReadTitle(rows []table.Row, cat *catalogue.Catalogue) Title {
	var t Title
	const plain, near, designated, heading, said = 1, 2, 3, 4, 5
	rank, level := 0, 0
	rows = prose.LastSection(rows)
	for i, r := range rows {
		_, whole := r.Filled()
		whole, _ = prose.WithoutSection(r, whole)
		text := t.pieces(whole, r.Line, cat)
		if len(Words(text)) == 0 {
			continue
		}
		if titleline.IsJob(text) || titleline.IsOfPaper(text) || r.Level == 0 && (titleline.IsRemark(text) || IsFreeLine(text)) {
			t.Remarks = append(t.Remarks, r)
			continue
		}
		if front, remark := titleline.BeforeRemark(text); remark != "" {
			text, whole, t.Other = front, front, append(t.Other, remark)
		}
		if i > 0 && prose.GoesOn(rows[i-1], r) {
			t.Other = append(t.Other, text)
			continue
		}
		name, told := connectorSaid(text)
		if told && r.Level == 0 && titleline.IsSentence(whole) &&
			(len(strings.Fields(whole)) > 8 || name == text && titleline.IsSentence(strings.TrimRight(whole, "."))) {
			name, told = text, false // "Pinout of the main board, rev B. Mind the silkscreen.", "Plug for the fan is not fitted."
		}
		if _, more := stripname.In(text); more != "" && told {
			t.Other = append(t.Other, more)
		}
		if of := titleline.InFrontOf(text, name); told && of != "" {
			t.Other = append(t.Other, of)
		}
		if called, more := titleline.Defined(text); called != "" {
			if name, told = called, true; more != "" {
				t.Other = append(t.Other, more)
			}
		}
		plug := titleline.Piece(whole)
		if plug != "" && !told {
			t.Other = append(t.Other, text) // with what it is in
			name, text, whole = plug, plug, plug
		}
		if of := prose.HeaderTo(text); of != "" && !told {
			name, told = of, true
		}
		if of := titleline.TableBelow(rows, i); of != "" && !told {
			name, told = of, true
		}
		of, first := near, ""
		first, _, _ = strings.Cut(text, " ")
		prose := !told && r.Level == 0 && !IsDesignator(strings.TrimRight(first, ":,")) &&
			(titleline.IsSentence(whole) || titleline.IsSentence(text) || prose.IsCountLine(text) ||
				strings.Contains(text, "->") && SpokenConnector(text) != "")
		if spoken := SpokenConnector(text); prose && spoken != "" && !r.Point {
			name, told = spoken, true
			t.Spoken = true
		} else if r.Point && i == len(rows)-1 && IsDesignator(strings.TrimRight(first, ":,")) {
			told = true // the point that the cavities are set in below
		} else if !told && (r.Point || prose || IsGeneric(text)) {
			t.Other = append(t.Other, text) // it says something of the connector, and not how it is called
			if IsDesignator(strings.TrimRight(first, ":,")) && i+1 == len(rows) {
				t.Rivals = append(t.Rivals, text)
			}
			continue
		}
		for k := i; k+1 < len(rows); k++ {
			if rows[k+1].Line > rows[k].Line+1 {
				of = plain
			}
		}
		switch {
		case i == len(rows)-1 && i > 0 && level == 1 && rank == heading && r.Level == 0 && titleline.NamesWithMore(text):
			of, t.Paper, t.Name = said, t.Name, "" // right above the table, below a heading of the whole paper
		case told, r.Level > 0 && rank == said && level == 0 && !t.Spoken: // what stands above a heading is of what it parts
			of = said
		case r.Level > 0:
			of = heading
		case IsDesignator(strings.TrimRight(first, ":,")), plug != "", titleline.Names(text):
			of = designated
		}
		if of > rank || of == heading && rank == heading || of == said && rank == said && !told ||
			of == said && level > 0 && r.Level == 0 && titleline.CountedPlug(text) != "" ||
			of == rank && of <= near && titleline.SaysHarness(t.Name) && !titleline.SaysHarness(text) {
			switch {
			case t.Name == "":
			case level > 0 && level < r.Level, rank <= near && of <= designated:
				t.Paper = t.Name
			default:
				t.Other = append(t.Other, t.Name)
				if of == rank {
					t.rival(t.Name, rank)
				}
			}
			_, full := r.Filled()
			t.Name, t.Row, t.Within, rank, level = name, r.Line, titleline.Within(full, name), of, r.Level
		} else {
			t.Other = append(t.Other, text)
			if of == rank {
				t.rival(text, of)
			}
		}
	}
	t.Name = strings.TrimRight(t.Name, " :")
	if rank < said && t.Name != "" {
		t.nearer(rows)
	}
	return t
}

// nearer keeps the texts between the name and the table that have the designator of a connector, or a word for one and little
// else.
func (t *Title) nearer(rows []table.Row) {
	for _, r := range rows {
		_, text := r.Filled()
		if r.Line <= t.Row || slices.Contains(t.Rivals, text) {
			continue
		}
		all := strings.Fields(text)
		named := slices.ContainsFunc(all, func(w string) bool {
			w = strings.Trim(w, ".,:;()")
			return IsDesignator(w) && w == strings.ToUpper(w) && len(w) < 5
		})
		if len(all) < 7 && (named || SaysConnector(text) && !IsGeneric(text)) && !strings.Contains(t.Name, text) {
			t.Rivals = append(t.Rivals, text)
		}
	}
}

// rival keeps a text that could be the name as well as the one that is taken: not one in brackets, and none of a rank that
// says nothing.
func (t *Title) rival(text string, rank int) {
	if rank > 1 && text != "" && !strings.HasPrefix(text, "(") && !strings.HasPrefix(text, "[") && len(strings.Fields(text)) < 7 {
		t.Rivals = append(t.Rivals, text)
	}
}

// pieces takes counts, insert and gender out of a row and gives what is left.
func (t *Title) pieces(text string, row int, cat *catalogue.Catalogue) string {
	all := titleline.CommaParts(text)
	if c, ok := ReadCount(text); ok {
		all = nil
		c.Row = row
		t.Counts = append(t.Counts, c)
	}
	var left []string
	for k, p := range all {
		p = strings.TrimSpace(p)
		if n := countedConnector(p); n > 0 && k > 0 {
			t.Counts = append(t.Counts, Count{Row: row, Of: "cavities", N: n, Text: p})
		} else if c, ok := ReadCount(p); ok {
			c.Row = row
			t.Counts = append(t.Counts, c)
		} else if t.shell(p, cat) {
			left = append(left, p)
		}
	}
	return strings.Join(left, ", ")
}

// shell takes insert and gender out of a title; it reports whether there is more to it.
func (t *Title) shell(text string, cat *catalogue.Catalogue) (more bool) {
	insert, gender, before := "", "", ""
	for w := range strings.FieldsSeq(text) {
		w = strings.Trim(w, ",;:()[].")
		switch f := table.Fold(w); {
		case titleline.IsInsert(w) && insert == "" && !prose.IsCounted(before):
			insert = w
		case f == "socket" || f == "sockets" || f == "female" || f == "buchse" || f == "buchsen" || f == "femelle" || f == "hembra" ||
			f == "femmina":
			gender = "socket"
		case f == "pins" || f == "male" || f == "stifte" || f == "macho" || f == "maschio":
			gender = "pin"
		case f == "pin" && insert != "":
			gender = "pin"
		case f == "insert" || f == "arrangement" || f == "contacts" || f == "shell" || f == "":
		default:
			more = true
		}
		before = w
	}
	if insert != "" {
		if _, known := cat.Insert(insert); known {
			t.Insert = insert
		} else {
			t.Unknown = insert
		}
	}
	if gender != "" && (insert != "" || !more || t.Insert != "") {
		t.Gender = gender
	}
	return more
}

// ConnectorName takes the word for a connector off the head of a title. "Plug A" is no name without its word.
func ConnectorName(text string) string {
	name, _ := connectorSaid(text)
	return name
}

// connectorSaid is ConnectorName, and reports whether the word stands there.
func connectorSaid(text string) (name string, said bool) {
	if of := ofDesignator(text); of != "" {
		return of, true
	}
	if strip, _ := stripname.In(text); strip != "" {
		return strip, true
	}
	if called, _ := titleline.Defined(text); called != "" {
		return called, true
	}
	if called := titleline.WithCounted(text); called != "" {
		return called, true
	}
	if i := strings.LastIndex(text, ", "); i > 0 { // "Cabinet C2, connector X1"
		if called, ok := connectorSaid(text[i+2:]); ok {
			return called, true
		}
	}
	for _, lead := range []string{"connector", "stecker", "steckverbinder", "connecteur", "conector", "connettore", "plug", "pin table",
		"pinout", "conn", "kontakt", "konektor", "liitin", "ficha", "konnektor", "stekker", "stik"} {
		if len(text) > len(lead) && strings.EqualFold(text[:len(lead)], lead) {
			rest := text[len(lead):]
			if name := strings.TrimLeft(rest, " :.#-"); name != "" && rest != "" && strings.ContainsAny(rest[:1], " :.#-") {
				if rest[0] == ' ' && prose.IsOrdinal(name) {
					return strings.TrimRight(text, " :"), true
				}
				if where, called, ok := strings.Cut(name, ": "); ok && titleline.CountsWays(called) {
					return strings.TrimSuffix(text, ": "+called), true // "Plug at the pump: 3 way"
				} else if ok && len(strings.Fields(where)) < 4 {
					name = strings.TrimSpace(called) // "Connector on board: J2"
				} else if first, _, _ := CutWord(table.Fold(name)); isOf(first) || prose.IsSideWord(first) {
					return titleline.WithoutWiring(text), true // "Ficha do painel" is no "do painel"
				}
				return name, true
			}
		}
	}
	if called := titleline.CountedPlug(text); called != "" {
		return called, true // "Prise A (4 voies)"
	}
	return titleline.WithoutWiring(text), false
}

// isOf reports whether a folded word joins the word for a connector with what it is of.
func isOf(w string) bool {
	switch w {
	case "of", "for", "on", "at", "in", "to", "do", "da", "das", "dos", "de", "del", "della", "dello", "dei", "des", "du", "la", "le",
		"von", "der", "am", "an", "im", "fur", "van", "voor", "til", "till", "k", "na", "w":
		return true
	}
	return false
}

// ReadCount reads "Size 20 contacts x26", "Plugs: 4", "12 wires", "26 x contact": one
// number and the word of what is counted, with nothing but sizes beside.
func ReadCount(text string) (Count, bool) {
	c := Count{Text: text}
	first, rest, _ := strings.Cut(strings.TrimSpace(text), " ")
	for _, w := range []string{first, strings.TrimRight(rest, ":.")} {
		if IsDesignator(w) && w == strings.ToUpper(w) && (w == first || CountWord(table.Fold(first)) == "plugs") {
			return Count{}, false // "X4 pins" and "plug X4" are connectors
		}
	}
	all := value.Scan(table.Fold(text))
	found := false
	for i := 0; i < len(all); i++ {
		t := all[i]
		switch {
		case t.Text == "size" && i+1 < len(all) && all[i+1].Kind == '0':
			i++
			if i+1 < len(all) && len(all[i+1].Text) == 1 && all[i+1].Kind == 'a' && all[i+1].Text != "x" {
				i++ // 22 D
			}
		case t.Kind == '0':
			n, err := strconv.Atoi(t.Text)
			if err != nil || found {
				return Count{}, false
			}
			c.N, found = n, true
		case CountWord(t.Text) != "":
			if c.Of != "" && c.Of != CountWord(t.Text) {
				if c.Of == "contacts" && t.Text == "pins" || t.Text == "wires" {
					return Count{}, false
				}
			}
			c.Of = CountWord(t.Text)
		case strings.Contains(" x qty off pcs total stuck st size : ( ) . , = * - seal blanking number of anzahl nombre numero no ",
			" "+t.Text+" "):
		default:
			return Count{}, false
		}
	}
	return c, found && c.Of != ""
}

// CountWord is what a folded word says is counted: "cavities", "contacts", "plugs", "wires",
// or "" where it is no such word.
func CountWord(word string) string {
	switch word {
	case "contact", "contacts", "pins", "sockets", "kontakte", "contactos", "contatti", "terminals":
		return "contacts"
	case "plug", "plugs", "stopfen", "blindstopfen", "bouchons", "tapones", "tappi":
		return "plugs"
	case "wire", "wires", "adern", "leitungen", "fils", "hilos", "fili":
		return "wires"
	case "cavity", "cavities", "way", "ways", "polig", "pole", "voies", "vias", "vie", "broches", "pines":
		return "cavities"
	}
	return ""
}

// SaysConnector reports whether a text names a connector: with the word for one, or with a
// designator at its head.
func SaysConnector(text string) bool {
	first, _, _ := strings.Cut(text, " ")
	_, said := connectorSaid(text)
	return said || IsDesignator(strings.TrimRight(first, ":,"))
}
