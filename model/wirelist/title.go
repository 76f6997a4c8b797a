package wirelist

import (
	"strconv"
	"strings"

	"contralay/model/catalogue"
)

// title is what the rows above a pin table say about its connector.
type title struct {
	name    string // "" where they do not name it
	row     int
	insert  string // a name of the catalogue
	unknown string // what looks like an insert and is none of the catalogue
	gender  string // pin | socket
	counts  []count
	paper   string   // heading above that of the connector: of the whole paper
	other   []string // what is not understood
}

// count is a number that a title states.
type count struct {
	row  int
	of   string // contacts | plugs | wires | cavities
	n    int
	text string
}

// readTitle reads the rows above a table: counts, insert and gender, and the name. A
// row that says "connector" is the name before any other; then the last heading that
// is more than an insert, as those above it are of the whole paper; then the first row
// that begins with a designator, "J1 - ECU"; then the first row at all, of those that no
// empty row parts from the table.
func readTitle(rows []Row, cat *catalogue.Catalogue) title {
	var t title
	const plain, near, designated, heading, said = 1, 2, 3, 4, 5
	rank, level := 0, 0
	for i, r := range rows {
		_, whole := r.Filled()
		text := t.pieces(whole, r.Line, cat)
		if text == "" {
			continue
		}
		name, of := connectorName(text), near
		for k := i; k+1 < len(rows); k++ {
			if rows[k+1].Line > rows[k].Line+1 {
				of = plain
			}
		}
		first, _, _ := strings.Cut(text, " ")
		switch {
		case name != text:
			of = said
		case r.Level > 0:
			of = heading
		case isDesignator(strings.TrimRight(first, ":,")):
			of = designated
		}
		if of > rank || of == heading && rank == heading {
			switch {
			case t.name == "":
			case level > 0 && level < r.Level, rank <= near && of <= designated:
				t.paper = t.name
			default:
				t.other = append(t.other, t.name)
			}
			t.name, t.row, rank, level = name, r.Line, of, r.Level
		} else {
			t.other = append(t.other, text)
		}
	}
	return t
}

// pieces takes counts, insert and gender out of a row and gives what is left.
func (t *title) pieces(text string, row int, cat *catalogue.Catalogue) string {
	all := strings.Split(text, ",")
	if c, ok := readCount(text); ok {
		all = nil
		c.row = row
		t.counts = append(t.counts, c)
	}
	var left []string
	for _, p := range all {
		p = strings.TrimSpace(p)
		if c, ok := readCount(p); ok {
			c.row = row
			t.counts = append(t.counts, c)
		} else if t.shell(p, cat) {
			left = append(left, p)
		}
	}
	return strings.Join(left, ", ")
}

// shell takes insert and gender out of a title; it reports whether there is more to it.
func (t *title) shell(text string, cat *catalogue.Catalogue) (more bool) {
	insert, gender := "", ""
	for w := range strings.FieldsSeq(text) {
		w = strings.Trim(w, ",;:()[].")
		switch f := fold(w); {
		case looksLikeInsert(w) && insert == "":
			insert = w
		case f == "socket" || f == "sockets" || f == "female" || f == "buchse" || f == "buchsen" || f == "femelle" || f == "hembra" || f == "femmina":
			gender = "socket"
		case f == "pins" || f == "male" || f == "stifte" || f == "macho" || f == "maschio":
			gender = "pin"
		case f == "pin" && insert != "":
			gender = "pin"
		case f == "insert" || f == "arrangement" || f == "contacts" || f == "shell" || f == "":
		default:
			more = true
		}
	}
	if insert != "" {
		if _, known := cat.Insert(insert); known {
			t.insert = insert
		} else {
			t.unknown = insert
		}
	}
	if gender != "" && (insert != "" || !more || t.insert != "") {
		t.gender = gender
	}
	return more
}

// looksLikeInsert: one or two digits, a dash, one to three digits.
func looksLikeInsert(w string) bool {
	a, b, ok := strings.Cut(w, "-")
	return ok && len(a) >= 1 && len(a) <= 2 && len(b) >= 1 && len(b) <= 3 && strings.Trim(a+b, "0123456789") == ""
}

// connectorName takes the word for a connector off the head of a title.
func connectorName(text string) string {
	for _, lead := range []string{"connector", "stecker", "steckverbinder", "connecteur", "conector", "connettore", "plug", "pin table", "pinout", "conn"} {
		if f := fold(text); len(f) == len(text) && strings.HasPrefix(f, lead) {
			rest := text[len(lead):]
			if name := strings.TrimLeft(rest, " :.#-"); name != "" && rest != "" && strings.ContainsAny(rest[:1], " :.#-") {
				return name
			}
		}
	}
	return text
}

// readCount reads "Size 20 contacts x26", "Plugs: 4", "12 wires", "26 x contact": one
// number and the word of what is counted, with nothing but sizes beside.
func readCount(text string) (count, bool) {
	c := count{text: text}
	all := scan(fold(text))
	found := false
	for i := 0; i < len(all); i++ {
		t := all[i]
		switch {
		case t.text == "size" && i+1 < len(all) && all[i+1].kind == '0':
			i++
			if i+1 < len(all) && len(all[i+1].text) == 1 && all[i+1].kind == 'a' && all[i+1].text != "x" {
				i++ // 22 D
			}
		case t.kind == '0':
			n, err := strconv.Atoi(t.text)
			if err != nil || found {
				return count{}, false
			}
			c.n, found = n, true
		case countWord(t.text) != "":
			if c.of != "" && c.of != countWord(t.text) {
				if c.of == "contacts" && t.text == "pins" || t.text == "wires" {
					return count{}, false
				}
			}
			c.of = countWord(t.text)
		case strings.Contains(" x qty off pcs total stuck st size : ( ) . , = * - seal blanking number of anzahl nombre numero no ", " "+t.text+" "):
		default:
			return count{}, false
		}
	}
	return c, found && c.of != ""
}

func countWord(word string) string {
	switch word {
	case "contact", "contacts", "pins", "sockets", "kontakte", "contactos", "contatti", "terminals":
		return "contacts"
	case "plug", "plugs", "stopfen", "blindstopfen", "bouchons", "tapones", "tappi":
		return "plugs"
	case "wire", "wires", "adern", "leitungen", "fils", "hilos", "fili":
		return "wires"
	case "cavity", "cavities", "way", "ways", "polig", "pole", "voies", "vias", "vie":
		return "cavities"
	}
	return ""
}
