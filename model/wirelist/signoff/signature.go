package signoff

import (
	"slices"
	"strings"

	"contralay/model/wirelist/table"
)

// Signature are the rows that end a letter: what its writer closes with, and a name or two below it, to the end of the table. A short
// name would be read as a row of the list.
//
//	Fuse box 8   Bilge pump 1   brown
//
//	Cheers
//	Tom
func Signature(rows []table.Row) []table.Row {
	const most = 4 // rows (no source)
	for i := max(len(rows)-most, 1); i < len(rows); i++ {
		if !isAloneInRow(rows[i]) || !closes(rows[i]) {
			continue
		}
		if slices.ContainsFunc(rows[i:], func(r table.Row) bool { return !isAloneInRow(r) }) {
			return nil
		}
		return rows[i:]
	}
	return nil
}

func isAloneInRow(r table.Row) bool {
	const most = 4 // words of a name (no source)
	n, text := r.Filled()
	return n == 1 && len(strings.Fields(text)) <= most && !strings.ContainsAny(text, "0123456789:=>")
}

// closes reports whether a row is what letters close with.
func closes(r table.Row) bool {
	_, text := r.Filled()
	switch strings.Trim(table.Fold(text), " ,.!") {
	case "cheers", "regards", "best regards", "kind regards", "best", "best wishes", "thanks", "many thanks", "thank you", "yours",
		"sincerely",
		"mfg", "gruss", "grusse", "viele grusse", "liebe grusse", "beste grusse", "mit freundlichen grussen", "danke",
		"merci", "cordialement", "salutations", "gracias", "saludos", "un saludo", "grazie", "saluti", "ciao",
		"groeten", "groetjes", "met vriendelijke groet", "mvh", "halsningar", "hilsen", "med venlig hilsen", "pozdrawiam", "dzieki",
		"obrigado", "cumprimentos":
		return true
	}
	return false
}

// WithoutSignature is a table without these rows.
func WithoutSignature(t table.Table) table.Table {
	t.Rows = t.Rows[:len(t.Rows)-len(Signature(t.Rows))]
	return t
}
