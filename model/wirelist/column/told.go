package column

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Where a column tells what to do with each wire, most of its cells say where to take it: "to L5 pin 1", "to the heater". The
// others, "cut and insulate", name no end.

// CutTo takes the words that lead to a far end off the head of a cell, "solder to L5 pin 1"; how is the one of them that says how.
// ok is false where none stand there, and where what follows is no place, "to be checked". lang is the language of the headings.
func CutTo(cell, lang string) (far, how string, ok bool) {
	word, behind, found := strings.Cut(strings.TrimSpace(cell), " ")
	if folded := table.Fold(word); found && isTaking(folded) {
		if !isGoing(folded) {
			how = word
		}
		word, behind, found = strings.Cut(strings.TrimSpace(behind), " ")
	}
	if !found || !isToWord(table.Fold(word), lang) {
		return "", "", false
	}
	far = strings.TrimSpace(behind)
	first, more, several := strings.Cut(far, " ")
	switch table.Fold(first) {
	case "be", "do", "", "werden", "-", "?":
		return "", "", false
	case "the", "dem", "der", "den", "la", "le", "el", "il", "lo":
		if several {
			far = strings.TrimSpace(more)
		}
	}
	return far, how, len(strings.Fields(far)) < 9
}

// isToWord reports whether a folded word says that where the wire goes follows.
func isToWord(w, lang string) bool {
	switch w {
	case "to", "into", "nach", "zu", "zum", "zur", "vers", "hacia", "verso", "naar", "till", "til":
		return true
	case "an", "auf":
		return lang == "de"
	case "al", "alla", "a":
		return lang == "it" || lang == "es"
	case "au", "aux":
		return lang == "fr"
	case "do":
		return lang == "pl" || lang == "cs"
	}
	return false
}

// isTaking reports whether a folded word tells that a wire is taken somewhere, before the word for where.
func isTaking(w string) bool {
	switch w {
	case "join", "joins", "joined", "wire", "wired", "extend", "extended", "solder", "soldered", "crimp", "crimped", "route", "routed":
		return true
	}
	return isGoing(w)
}

// isGoing reports whether a folded word tells no more than that.
func isGoing(w string) bool {
	switch w {
	case "go", "goes", "connect", "connects", "connected", "run", "runs", "take", "taken", "geht", "fuhrt", "va", "gaat", "gar":
		return true
	}
	return false
}

// TellsTo counts the cells of a column that lead to a far end, and those that hold anything but a state.
func TellsTo(rows []table.Row, i int, lang string) (to, filled int) {
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		filled++
		if _, _, ok := CutTo(r.Cells[i], lang); ok {
			to++
		}
	}
	return to, filled
}

// PartTold takes the leading words off the far ends of a column that tells what to do, and gives what is none a column of its own,
// behind the last. What stands behind a comma is a remark, unless it is the cavity.
func PartTold(b *shape.Block) {
	i := slices.IndexFunc(b.Cols, func(c shape.Column) bool { return c.Field == name.FieldTo })
	if i < 0 {
		return
	}
	if to, filled := TellsTo(b.Rows, i, b.Lang); !b.Cols[i].Told && (to < 2 || 2*to < filled) {
		return
	}
	wide := len(b.Cols)
	for _, r := range b.Rows {
		wide = max(wide, len(r.Cells))
	}
	b.Cols, b.Rows = slices.Clone(b.Cols), slices.Clone(b.Rows)
	for len(b.Cols) < wide {
		b.Cols = append(b.Cols, shape.Column{Field: name.FieldKeep})
	}
	b.Cols = append(b.Cols, shape.Column{Field: name.FieldKeep, Done: true})
	for k, r := range b.Rows {
		if i >= len(r.Cells) || shape.IsText(r) || value.IsNothing(r.Cells[i]) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		cells := make([]string, wide+1)
		copy(cells, r.Cells)
		far, how, ok := CutTo(r.Cells[i], b.Lang)
		switch front, remark, comma := strings.Cut(far, ", "); {
		case ok && comma && !name.IsEnd(front+" "+remark):
			cells[i], cells[wide] = front, value.JoinNonEmpty("; ", how, remark)
		case ok:
			cells[i], cells[wide] = far, how
		case name.IsEnd(r.Cells[i]):
			continue
		default:
			cells[i], cells[wide] = "", r.Cells[i]
		}
		b.Rows[k].Cells = cells
	}
}

// TellsNoEnd reports whether a row tells something else to do with its wire than to take it anywhere: "cut and insulate".
func TellsNoEnd(b *shape.Block, cells []string) bool {
	for i, c := range b.Cols {
		if c.Done && i < len(cells) && cells[i] != "" {
			return value.IsNothing(b.Cell(cells, name.FieldTo))
		}
	}
	return false
}
