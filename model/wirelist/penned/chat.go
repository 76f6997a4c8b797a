package penned

import (
	"strings"

	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// textsOf are the rows as lines of text again, without the time and the name that a chat writes before each message.
// chat says that they are such messages.
//
//	[14/02 19:03] Rui: P1-2 preto 4 vai à bomba
//	03.05.21, 08:12 - Ana: P1-3 livre
func textsOf(rows []table.Row) (texts []string, chat bool) {
	texts = make([]string, len(rows))
	sent := make([]string, len(rows))
	n := 0
	for i, r := range rows {
		texts[i] = joinedCells(r.Cells)
		if says, ok := Message(texts[i]); ok {
			sent[i] = says
			n++
		} else {
			sent[i] = texts[i]
		}
	}
	if n < least || 4*n < 3*len(rows) {
		return texts, false
	}
	return sent, true
}

// joinedCells is the text that a line had before commas parted it.
func joinedCells(cells []string) string {
	if len(cells) == 1 {
		return cells[0]
	}
	var b strings.Builder
	for i, c := range cells {
		if i > 0 {
			b.WriteByte(',')
			if before := cells[i-1]; before == "" || c == "" || !value.IsDigit(before[len(before)-1]) || !value.IsDigit(c[0]) {
				b.WriteByte(' ')
			}
		}
		b.WriteString(c)
	}
	return b.String()
}

// Message is what a line of a chat says behind its time and name; ok is false where it has none.
func Message(text string) (says string, ok bool) {
	const longestName = 40 // bytes (no source)
	rest := text
	if in, behind, closed := strings.Cut(text, "] "); closed && strings.HasPrefix(in, "[") && strings.Contains(in, ":") {
		rest = behind
	} else if stamp, behind, dashed := strings.Cut(text, " - "); dashed && len(stamp) < 24 && strings.Contains(stamp, ":") &&
		value.IsDigit(stamp[0]) {
		rest = behind
	} else {
		return text, false
	}
	who, says, named := strings.Cut(rest, ": ")
	if !named || len(who) > longestName {
		return text, false
	}
	return strings.TrimSpace(says), true
}
