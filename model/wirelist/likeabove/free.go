package likeabove

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// freeOf parts a line that says of one cavity of a device that it is free, "fuse box 6 free": the device and its cavity, and the word.
func freeOf(text string) (end, state string) {
	const most = 6 // words (no source)
	w := strings.Fields(strings.TrimRight(text, ". "))
	if len(w) < 3 || len(w) > most || strings.ContainsAny(text, ",;>→") {
		return "", ""
	}
	last := len(w) - 1
	if bare := strings.TrimRight(w[last-1], ":"); bare != w[last-1] {
		w[last-1] = bare // "fuse box 6: free"
	} else if strings.Trim(bare, "-–=") == "" && last > 2 {
		w = append(w[:last-1:last-1], w[last]) // "fuse box 6 - free"
		last--
	}
	if !name.IsCavity(w[last-1]) || !strings.ContainsAny(w[last-1], "0123456789") || name.StateOf(w[last]) == name.Used {
		return "", ""
	}
	return strings.Join(w[:last], " "), w[last]
}

// withFree writes an arrow into such lines, where other lines begin at the same device and another cavity.
func withFree(rows []table.Row) (told []Told) {
	var starts map[string]bool
	for i := range rows {
		r := &rows[i]
		if len(r.Cells) != 1 || r.Level > 0 || i == 0 || len(rows[i-1].Cells) != 1 || rows[i-1].Line+1 != r.Line {
			continue
		}
		end, state := freeOf(r.Cells[0])
		if end == "" {
			continue
		}
		if starts == nil {
			starts = startsOf(rows)
		}
		if starts[table.Fold(end[:strings.LastIndexByte(end, ' ')])] && !starts[table.Fold(end)] {
			r.Cells = []string{end + " -> " + state}
			told = append(told, Told{Line: r.Line, What: end + " " + state, Free: true})
		}
	}
	return told
}

// startsOf are the near ends of the lines, folded, and the devices of those with a cavity.
func startsOf(rows []table.Row) map[string]bool {
	all := map[string]bool{}
	for _, r := range rows {
		if len(r.Cells) != 1 || r.Level > 0 {
			continue
		}
		from, to, _ := runline.Part(r.Cells[0])
		if at := strings.LastIndexByte(from, ' '); to != "" && at > 0 && name.IsCavity(from[at+1:]) {
			all[table.Fold(from)], all[table.Fold(from[:at])] = true, true
		}
	}
	return all
}
