package inbars

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/columned"
)

// A remark on a board with several plugs may head two columns by the board and by what it is wired to, with a rule below. The rows say
// the plug and the pin, and the pin over there. A dash stands between the two, or, in a table that says the board's name of the pin as
// well, the columns.
//
//	Hub        Winch              Plug    Hub          Winch
//	---        -----              Pin     Name
//	CN4-2   -  BEAT               ------  ------       -----
//	CN4-7   -  GND                CN4-2   IO4 (CLK)    BEAT (or take CN2-5 for 3 V)
//	CN5-1   -  RUN                CN4-7   GND          GND
//	                              CN5-1   IO9          RUN

// plugPin is the designator of a plug, a sign and the number of a pin.
var plugPin = regexp.MustCompile(`^[A-Z]{1,4}[0-9]{0,3}[-.:][0-9]{1,3}$`)

// dashed are the lines of such a table at the front of some; nil where none stands there.
func dashed(lines []string) (made []string) {
	ruled := isDashes(lines[1]) || isDashes(lines[2])
	if !ruled && !plugPin.MatchString(firstWord(lines[1])) {
		return nil // most lines
	}
	heads := columned.Gapped(lines[0])
	upper := 1 // lines of headings
	if ruled && !isRule(lines[1], len(heads)) {
		upper = 2
	}
	if len(heads) < 2 || len(heads) > 3 || len(heads) != upper+1 || strings.Contains(lines[0], "|") ||
		ruled && !isRule(lines[upper], len(heads)) || !ruled && (len(heads) > 2 || !areWords(heads)) {
		return nil
	}
	below := upper + 1
	if !ruled {
		upper, below = 0, 1
	}
	if upper == 2 && !areNames(columned.Gapped(lines[1]), heads) {
		return nil
	}
	rows, seen := rowsOf(lines[below:], heads), map[string]bool{}
	if len(rows) < leastRows {
		return nil
	}
	far := heads[len(heads)-1].Text
	if isPlainHead(far) || isPlainHead(heads[0].Text) && len(heads) == 2 {
		return undashed(heads, rows, upper)
	}
	made = append(made, barred("From", "To", "To pin", "Signal", "Note"))
	for k := range upper {
		made = append(made, []string{"|---|---|---|---|---|", barred("", "", "", "", "")}[k])
	}
	for _, r := range rows {
		there, note := r[len(r)-1], ""
		if bare, in, ok := strings.Cut(there, " ("); ok && strings.HasSuffix(in, ")") {
			there, note = bare, strings.TrimSuffix(in, ")")
		}
		called := ""
		if len(r) == 3 {
			called = r[1]
		}
		if !plugPin.MatchString(r[0]) || plugPin.MatchString(there) || seen[r[0]] || !isShort(there) {
			return nil
		}
		seen[r[0]] = true
		made = append(made, barred(r[0], far, there, called, note))
	}
	return made
}

// undashed are the lines of a table with its own headings and without the dashes, where the headings say what stands below them and name
// no part; nil where a second pin stands behind the dash.
//
//	Pin     Signal
//	------  ------
//	CN4-1   -  FEED
func undashed(heads []columned.Field, rows [][]string, upper int) (made []string) {
	if len(heads) != 2 || upper > 1 {
		return nil
	}
	made = append(made, barred(heads[0].Text, heads[1].Text))
	if upper == 1 {
		made = append(made, "|---|---|")
	}
	for _, r := range rows {
		if !plugPin.MatchString(r[0]) || plugPin.MatchString(r[1]) {
			return nil
		}
		made = append(made, barred(r...))
	}
	return made
}

// rowsOf are the rows of such a table: two cells with a dash between, or three below the headings.
func rowsOf(lines []string, heads []columned.Field) (rows [][]string) {
	if len(heads) == 3 {
		return paragraph(lines, heads)
	}
	for _, l := range lines {
		cells := columned.Gapped(l)
		if bare := strings.TrimRight(firstCell(cells), "-–=<>→↔"); len(cells) == 2 && strings.HasSuffix(bare, " ") {
			cells = []columned.Field{{Text: strings.TrimSpace(bare)}, {Text: "-"}, cells[1]} // one blank before the dash
		}
		switch {
		case len(cells) == 0:
			return rows
		case len(cells) != 3 || strings.Trim(cells[1].Text, "-–=<>→↔") != "" || strings.Contains(l, "|"):
			return nil
		}
		rows = append(rows, []string{cells[0].Text, cells[2].Text})
	}
	return rows
}

// isRule reports whether a line is a rule of so many pieces.
func isRule(line string, pieces int) bool {
	return isDashes(line) && len(columned.Gapped(line)) == pieces
}

// isDashes reports whether a line is dashes alone.
func isDashes(line string) bool {
	return strings.Contains(line, "--") && strings.Trim(line, "- \t\r") == ""
}

// areNames reports whether the second line of headings says that pins stand below the first and their names below the second.
func areNames(lower, heads []columned.Field) bool {
	return len(lower) == 2 && strings.EqualFold(lower[0].Text, "pin") && strings.EqualFold(lower[1].Text, "name") &&
		under(heads, lower[0]) == 0 && under(heads, lower[1]) == 1
}

// isPlainHead reports whether a heading says what stands below it, and names no part. Common words, from memory, no source.
func isPlainHead(text string) bool {
	switch strings.ToLower(strings.TrimRight(text, " .:#")) {
	case "from", "to", "start", "end", "pin", "pins", "pin no", "signal", "signals", "function", "name", "wire", "colour", "color", "use",
		"goes to", "destination", "net", "connector", "plug", "cavity", "description", "note", "von", "nach", "ziel", "farbe", "funktion",
		"kontakt", "stecker", "belegung", "de", "vers", "da", "a", "desde", "hasta", "broche", "fonction", "couleur", "funcion", "señal":
		return true
	}
	return false
}

// isShort reports whether a cell can be the name of a pin.
func isShort(cell string) bool { return cell != "" && len(cell) <= 20 && strings.Count(cell, " ") < 2 }

// firstCell is the text of the first of some cells.
func firstCell(cells []columned.Field) string {
	if len(cells) == 0 {
		return ""
	}
	return cells[0].Text
}

// firstWord is the first word of a line.
func firstWord(line string) string {
	word, _, _ := strings.Cut(strings.TrimSpace(line), " ")
	return word
}

// areWords reports whether some headings are words that no value stands in.
func areWords(heads []columned.Field) bool {
	for _, h := range heads {
		if plugPin.MatchString(h.Text) || len(h.Text) > 24 || strings.ContainsAny(h.Text, ".,:;=()") ||
			strings.Trim(h.Text, "0123456789-–") == "" {
			return false
		}
	}
	return true
}
