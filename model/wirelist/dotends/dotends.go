// Package dotends reads tables of two things whose cells are a connector of the one with its pin behind a dot, and a pin of the other
// with its number behind a word for it. What stands behind a stroke is the name of the pin.
//
//	Signal | Tide board    | Logger (DB-25)
//	CLK    | J40.PA1/CLK   | pin 2/D0
//	RESET  | J40.nRES      | pin 3/D1
//	GND    | J41.GND       | pin 23/GND
//
// It makes rows with columns of their own for connectors and pins. A table of which one cell says something else stays as it is.
package dotends

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// leastRows is how many rows such a table has at the least (no source).
const leastRows = 3

// Rows are the rows of a sheet, those of such tables in columns for connectors and pins.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() || h.Recipe != nil {
		return t.Rows
	}
	rows := t.Rows
	for i := 1; i < len(rows); i++ {
		dotted, worded := columnsOf(rows[i].Cells)
		if dotted < 0 {
			continue
		}
		last := i
		for last+1 < len(rows) && isRow(rows[last+1].Cells, dotted, worded) {
			last++
		}
		head := rows[i-1]
		if n := len(head.Cells); last-i+1 >= leastRows && n == len(rows[i].Cells) && !slices.Contains(head.Cells, "") &&
			!holdsEnd(head.Cells) {
			rows = slices.Clone(rows)
			rows[i-1].Cells = in(head.Cells, dotted, worded, []string{"From", "From pin"}, []string{"To", "To pin", "Note"})
			for k := i; k <= last; k++ {
				connector, pin, _ := cutDot(rows[k].Cells[dotted])
				number, called, _ := cutWord(rows[k].Cells[worded])
				if strings.Contains(pin, "/") { // two names of one pin, and no two pins
					called = strings.TrimPrefix(called+", "+pin, ", ")
					pin = strings.ReplaceAll(pin, "/", "-")
				}
				rows[k].Cells = in(rows[k].Cells, dotted, worded, []string{connector, pin},
					[]string{head.Cells[worded], number, called})
			}
		}
		i = last
	}
	return rows
}

// in are some cells, two of them with others in their places.
func in(cells []string, dotted, worded int, from, to []string) (out []string) {
	for k, c := range cells {
		switch k {
		case dotted:
			out = append(out, from...)
		case worded:
			out = append(out, to...)
		default:
			out = append(out, c)
		}
	}
	return out
}

// columnsOf are the two columns of a row that is of such a table; −1 where it is none.
func columnsOf(cells []string) (dotted, worded int) {
	const most = 6 // columns (no source)
	if dotted, worded = -1, -1; len(cells) < 2 || len(cells) > most {
		return -1, -1
	}
	for k, c := range cells {
		if _, _, ok := cutDot(c); ok && dotted < 0 {
			dotted = k
		} else if _, _, ok := cutWord(c); ok && worded < 0 {
			worded = k
		}
	}
	if dotted < 0 || worded < 0 {
		return -1, -1
	}
	return dotted, worded
}

func isRow(cells []string, dotted, worded int) bool {
	a, b := columnsOf(cells)
	return a == dotted && b == worded
}

func holdsEnd(cells []string) bool {
	return slices.ContainsFunc(cells, func(c string) bool {
		_, _, dot := cutDot(c)
		_, _, word := cutWord(c)
		return dot || word
	})
}

// cutDot parts a designator and the pin behind a dot, "J40.PA1/CLK".
func cutDot(cell string) (connector, pin string, ok bool) {
	const longest = 32 // bytes (no source)
	connector, pin, ok = strings.Cut(cell, ".")
	letters := strings.TrimRight(connector, "0123456789")
	return connector, pin, ok && len(cell) <= longest && letters != "" && letters != connector && len(letters) < 4 &&
		strings.Trim(letters, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == "" && pin != "" && !strings.ContainsAny(pin, " .")
}

// cutWord parts the number behind a word for a pin and the name behind a stroke, "pin 2/D0".
func cutWord(cell string) (number, called string, ok bool) {
	word, rest, ok := strings.Cut(cell, " ")
	if !ok || !name.IsPinWord(table.Fold(word)) {
		return "", "", false
	}
	number, called, _ = strings.Cut(rest, "/")
	number = strings.TrimSpace(number)
	return number, strings.TrimSpace(called), number != "" && len(number) < 4 && strings.Trim(number, "0123456789") == ""
}
