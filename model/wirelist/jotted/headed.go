package jotted

import (
	"strings"
	"unicode"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// What lines of one connector after the other have: its name above them, letters for cavities, and sizes without a unit.
//
//	ALT  (alternator)
//	  B   charge        8   RED   > battery stud
//	  L   charge lamp   20  BRN   > EC2-5

// addLettered adds the lines that begin with a letter alone, where others of the list begin with a number.
func (of lines) addLettered(t *table.Table, lang string) {
	pins := false
	for _, l := range of {
		pins = pins || l.pin
	}
	if !pins {
		return
	}
	for i, r := range t.Rows {
		if _, is := of[i]; is || r.Level > 0 || len(r.Cells) < 2 || len(r.Cells[0]) != 1 || r.Cells[0] < "A" || r.Cells[0] > "Z" {
			continue
		}
		letter := r.Cells[0]
		r.Cells = append([]string{"1"}, r.Cells[1:]...)
		if l, ok := readLine(r, lang); ok && l.pin && (l.told() || l.to == "" && name.StateOf(l.signal) != name.Used) {
			l.end = letter
			of[i] = l
		}
	}
}

// withoutBare keeps the one text behind the first that is a number alone, and could be a size, and gives back the others: the first
// itself beside a colour, with the name behind it, "red | 18 | horn".
func (l *line) withoutBare(texts []string) (left []string) {
	for i, s := range texts {
		g, ok := value.ParseGauge(s, value.BareAWG, value.MarkUnknown)
		behind := i > 0 || l.colour != "" && len(texts) > 1 && strings.ContainsFunc(texts[1], unicode.IsLetter)
		if behind && l.bare == "" && ok && g.Size != "" && strings.Trim(s, "0123456789.,") == "" {
			l.bare = s
			continue
		}
		left = append(left, s)
	}
	return left
}

// size takes the numbers alone for sizes, where most lines that say where their wire goes have one and none has a size with its unit;
// else they go into the notes.
func (of lines) size() {
	told, bare, sized := 0, 0, false
	for _, l := range of {
		sized = sized || l.size != ""
		if l.told() {
			told++
			if l.bare != "" {
				bare++
			}
		}
	}
	for i, l := range of {
		switch {
		case l.bare == "":
			continue
		case !sized && 4*bare >= 3*told:
			l.size = l.bare
		case l.note == "":
			l.note = l.bare
		default:
			l.note = l.bare + "; " + l.note
		}
		of[i] = l
	}
}

// titled makes one text of a row that stands right above such lines and names their connector in two cells: "CRK  (crank sensor)", or
// without the brackets behind an empty line.
func (of lines) titled(rows []table.Row, i int) table.Row {
	r, below := rows[i], of[i+1]
	n, first := r.Filled()
	said := strings.TrimSpace(strings.TrimPrefix(strings.Join(strings.Fields(strings.Join(r.Cells, " ")), " "), first))
	if !below.pin || n != 2 || len(r.Cells[0]) < 2 || name.IsCavity(first) || name.StateOf(said) != name.Used {
		return r
	}
	apart := (i == 0 || rows[i-1].Line+1 < r.Line) && !strings.ContainsAny(first, " :") && first == strings.ToUpper(first)
	if strings.HasPrefix(said, "(") && strings.HasSuffix(said, ")") || apart {
		r.Cells = []string{first + " " + said}
	}
	return r
}
