package pinlines

import (
	"regexp"
	"slices"
	"strings"

	"contralay/model/wirelist/huekey"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// heads are the headings of such a table, and in German, whose short forms of colours count below its own headings.
var heads = map[string][]string{
	"":   {"Connector", "Pin", "Signal", "Colour", "Size", "To", "Note"},
	"de": {"Stecker", "Pin", "Signal", "Farbe", "Querschnitt", "Nach", "Bemerkung"},
}

// least is how many lines a run has (no source).
const least = 3

// Rows puts a table in the place of each run of such lines; the rows are as they were where there is none. Where one run has as many lines
// as it needs, shorter ones of other plugs are some as well.
func Rows(h shape.Headings, t *table.Table) []table.Row {
	if h.HeadLine() > 0 || h.Numbered() {
		return t.Rows
	}
	made, long, above := map[int][]table.Row{}, false, map[int]int{}
	of := map[int]int{}
	for i := 0; i < len(t.Rows); {
		n := runAt(t.Rows, i)
		if of[i] = n; n > 0 && !isHeaded(h, t.Rows, i) {
			if made[i] = tableOf(h, t.Rows, i, n); made[i] == nil && n > 1 {
				made[i], above[i] = beside(h, t.Rows, i, n)
			}
		}
		long = long || n >= least && made[i] != nil
		i += max(n, 1)
	}
	if !long {
		return t.Rows
	}
	var out []table.Row
	for i := 0; i < len(t.Rows); {
		n := of[i]
		switch {
		case made[i] != nil:
			out = out[:len(out)-above[i]]
			if k := len(out) - 1; k >= 0 && above[i] == 0 && out[k].Raw != "" {
				title(&out[k], t.Marked && t.Rows[i].Line <= out[k].Line+2)
			}
			out = append(out, made[i]...)
		default:
			apart := len(out) > 0 && n > 1 // lines that are not understood are none of the table above them
			out = append(out, t.Rows[i:i+max(n, 1)]...)
			if at := len(out) - n; apart {
				out[at].Apart = true
			}
		}
		i += max(n, 1)
	}
	return out
}

// isHeaded reports whether a row of cells stands below headings that are known, with nothing but rows of cells between: the lines from it
// on are a table already.
func isHeaded(h shape.Headings, rows []table.Row, i int) bool {
	for k := i; k > 0; k-- {
		if cells, _ := rows[k].Filled(); cells < 2 || rows[k].Line != rows[k-1].Line+1 {
			return false
		}
		if h.IsHead(rows[k-1]) {
			return true
		}
	}
	return false
}

// belowHeadings is the level of a line that heads what follows, below every heading with its signs.
const belowHeadings = 7

// title makes one cell of the row above a run, and the heading of it in a text with headings.
func title(r *table.Row, heads bool) {
	if len(r.Cells) > 1 {
		r.Cells = []string{withoutBlanks(r.Raw)}
	}
	if f, ok := frontOf(r.Raw); ok && f.isLettered() && heads && !r.Point { // "X1 (motor plug)"
		r.Level = belowHeadings
	}
}

// runAt is how many rows from one on begin with a cavity each, and with what goes on in a line below set in deeper.
func runAt(rows []table.Row, i int) (n int) {
	last, lettered := "", false
	for k := i; k < len(rows); k++ {
		if rows[k].Raw == "" || k > i && rows[k].Line > rows[k-1].Line+2 {
			return n
		}
		f, ok := frontOf(rows[k].Raw)
		if !ok {
			if k == i || !goesOn(rows[k-1].Raw, rows[k].Raw) {
				return n
			}
			continue
		}
		if k == i {
			lettered = f.isLettered()
		}
		if f.isLettered() != lettered { // the title of the plug
			return n
		}
		if k > i && rows[k].Line > rows[k-1].Line+1 && name.CompareCavities(last, f.pins[0]) >= 0 {
			return n
		}
		last = f.pins[len(f.pins)-1]
		n = k - i + 1
	}
	return n
}

// goesOn reports whether a line is set in as far as what stands behind the cavity of the line above.
func goesOn(above, raw string) bool {
	f, ok := frontOf(above)
	indent := len(raw) - len(strings.TrimLeft(raw, " \t"))
	return ok && indent > f.at+2
}

// tableOf is the headings and the rows of a run; nil where it is none.
func tableOf(h shape.Headings, rows []table.Row, i, n int) []table.Row {
	if i > 0 && len(rows[i-1].Cells) > 1 && h.IsHead(rows[i-1]) || h.IsHead(rows[i]) {
		return nil
	}
	if i > 0 && rows[i].Line == rows[i-1].Line+1 && isRowLike(rows[i-1].Raw) {
		return nil // of which the first is not understood
	}
	var best []*line
	lang, most := "", -1
	for _, of := range readers(h.Colours) {
		if of.loose && best != nil {
			break
		}
		run, ok := linesOf(rows[i:i+n], of)
		if !ok || of.lang == "de" && isEnglish(run) || of.loose && !mostHued(run, of) {
			continue
		}
		hued, used := 0, 0
		for _, l := range run {
			if l.colour != "" {
				hued++
			}
			if !l.free {
				used++
			}
		}
		for _, l := range run { // letters beside a size are a short form that is not known, where most lines have a colour
			if l.colour == "" && !l.free && 2*hued >= used {
				l.takeCode()
			}
		}
		if hued > most {
			best, lang, most = run, of.lang, hued
		}
		if hued == used {
			break // no other way reads more
		}
	}
	if best == nil || !settle(best) || !join(best) {
		return nil
	}
	return written(best, lang, rows[i:i+n])
}

// isRowLike reports whether a line above a run could be one of it: a digit or a word for a cavity is before several pieces.
func isRowLike(raw string) bool {
	first, _, _ := strings.Cut(strings.TrimSpace(raw), " ")
	return first != "" && (first[0] <= '9' && first[0] >= '0' || name.IsPinWord(table.Fold(first))) &&
		len(wide.Split(strings.TrimSpace(raw), -1)) > 2
}

// readers are the ways to read the lines of a run, the first that reads most colours is taken.
func readers(key huekey.ColourKey) (all []reader) {
	for _, loose := range []bool{false, true} {
		for _, dash := range []bool{false, true} {
			all = append(all, reader{"", dash, key, loose}, reader{"de", dash, key, loose})
		}
	}
	return all
}

// english are short forms of colours that German does not have.
var english = regexp.MustCompile(`(?i)^(?:bk|blk|rd|red|ye|yel|bu|blu|wh|wht|gy|gry|og|pk|vt|bn|brn)$`)

// isEnglish reports whether the colour of some line has such a short form.
func isEnglish(run []*line) bool {
	return slices.ContainsFunc(run, func(l *line) bool {
		parts := strings.FieldsFunc(l.colour, func(r rune) bool { return strings.ContainsRune("/- ", r) })
		return slices.ContainsFunc(parts, english.MatchString)
	})
}

// mostHued reports whether half of the colours of a run are known.
func mostHued(run []*line, r reader) bool {
	all, known := 0, 0
	for _, l := range run {
		if l.colour != "" {
			if all++; isColour(l.colour, r) {
				known++
			}
		}
	}
	return 2*known >= all
}

// linesOf reads the rows of a run in one way.
func linesOf(rows []table.Row, as reader) (run []*line, ok bool) {
	for k, r := range rows {
		l, ok := lineOf(r.Raw, as)
		if !ok {
			if f, is := frontOf(r.Raw); len(run) == 0 || is && f.at <= run[len(run)-1].front.at+2 {
				return nil, false
			}
			last := run[len(run)-1]
			last.notes = append(last.notes, withoutBlanks(r.Raw))
			continue
		}
		l.row = k
		run = append(run, l)
	}
	return run, len(run) > 0
}

// areTerminals reports whether numbers count the lines and the letters behind them are the terminals of a device: "1. BAT - to the fuse
// block". Another package reads them.
func areTerminals(run []*line) bool {
	n := 0
	for _, l := range run {
		switch {
		case l.free:
		case l.to == "" || len(l.texts) != 1 || !terminal.MatchString(l.texts[0]):
			return false
		default:
			n++
		}
	}
	return n > 0
}

// pointBothWays reports whether arrows right behind the cavities say where the signals flow: some lines have one to the left and some one
// to the right, or none has any.
func pointBothWays(run []*line) bool {
	n, left := 0, 0
	used := 0
	for _, l := range run {
		if l.free {
			continue
		}
		used++
		if l.points != "" {
			n++
		}
		if l.points == "<" {
			left++
		}
	}
	return n == 0 || n == used && left > 0 && left < n
}

// areAmounts reports whether the first text of some line is a current, as of a fuse, or a length, as of what is to be bought: it is no
// name.
func areAmounts(run []*line) bool {
	return slices.ContainsFunc(run, func(l *line) bool { return len(l.texts) > 0 && amount.MatchString(l.texts[0]) })
}

// amount is a current, a length or a count.
var amount = regexp.MustCompile(`^[0-9.,]+ ?(?:[Aa]|m|mm|cm|ft|pcs|x|off)$`)

// terminal is the letters of a terminal.
var terminal = regexp.MustCompile(`^[A-Z]{1,3}$`)

// takeCode takes letters that stand beside the size for a colour, where the line says its colour nowhere.
func (l *line) takeCode() {
	for i, t := range l.texts {
		w := strings.Fields(t)
		if l.size == "" && len(w) == 2 {
			if size, bare := sizeOf(w[0]); size && letters.MatchString(w[1]) {
				l.size, l.bare, l.colour = w[0], bare, w[1]
			} else if size, bare := sizeOf(w[1]); size && letters.MatchString(w[0]) {
				l.size, l.bare, l.colour = w[1], bare, w[0]
			}
			if l.colour != "" {
				l.texts = slices.Delete(l.texts, i, i+1)
				return
			}
		}
	}
}

// isOutput reports whether a text is the number of an output or an input, and no name of what is wired there.
func isOutput(text string) bool {
	w := strings.Fields(text)
	return len(w) == 2 && (words.IsOutput(table.Fold(w[0])) || table.Fold(w[0]) == "in") && strings.Trim(w[1], "0123456789") == ""
}

// letters is a text that may be the short form of a colour.
var letters = regexp.MustCompile(`^[A-Z]{1,5}(?:[/-][A-Z]{1,5}){0,2}$`)

// settle says what the texts of the lines are by all of them; false where they are not of one kind.
func settle(run []*line) bool {
	used, told, hued, bare, sections, behind := 0, 0, 0, 0, 0, 0
	seen := map[string]bool{}
	last := ""
	for _, l := range run {
		for _, p := range l.pins {
			if key := l.plug + ":" + p; seen[key] || (l.plug == "") != (run[0].plug == "") {
				return false
			} else {
				seen[key] = true
			}
		}
		if a, b := name.Ordinal(last), name.Ordinal(l.pins[0]); l.plug == "" && a > 0 && b > 0 && b <= a {
			return false
		}
		last = l.pins[len(l.pins)-1]
		if l.free {
			continue
		}
		used++
		if l.colour != "" || l.size != "" {
			told++
		}
		if l.colour != "" {
			hued++
		}
		if l.behind {
			behind++
		}
		if l.bare {
			bare++
			if value.IsSection(l.size) {
				sections++
			}
		}
	}
	if used == 0 || 3*told < 2*used || bare > 0 && 3*bare < 2*used || 3*behind >= 2*used {
		return false // what stands behind the values of most lines may be where they go
	}
	if areTerminals(run) || !pointBothWays(run) || areAmounts(run) {
		return false
	}
	closeBrackets(run)
	for _, l := range run {
		if l.free {
			continue
		}
		if l.colour == "" && 2*hued >= used && len(l.texts) > 1 { // a short form that is not known
			if k := slices.IndexFunc(l.texts[1:], letters.MatchString); k >= 0 {
				l.colour = l.texts[k+1]
				l.texts = slices.Delete(l.texts, k+1, k+2)
			}
		}
		if len(l.texts) > 1 && isOutput(l.texts[0]) {
			l.texts[0], l.texts[1] = l.texts[1], l.texts[0]
		}
		if l.colour == "" && len(l.texts) > 1 && slices.ContainsFunc(l.texts, letters.MatchString) && 2*hued < used {
			return false // letters that another package may know
		}
		for _, s := range l.texts {
			if l.signal == "" && !isRemark(s) {
				l.signal = s
			} else {
				l.notes = append(l.notes, s)
			}
		}
		if l.bare && sections > 0 && l.size != "" {
			l.size += " mm²"
		}
	}
	return true
}

// written are the headings and the rows of a run; columns that no line has something in are left out.
func written(run []*line, lang string, rows []table.Row) (out []table.Row) {
	cells := func(l *line) []string {
		return []string{l.plug, strings.Join(l.pins, ", "), l.signal, l.colour, l.size, l.to, strings.Join(l.notes, "; ")}
	}
	var keep []int
	for k := range heads[""] {
		if slices.ContainsFunc(run, func(l *line) bool { return cells(l)[k] != "" }) {
			keep = append(keep, k)
		}
	}
	pick := func(all []string) (some []string) {
		for _, k := range keep {
			some = append(some, all[k])
		}
		return some
	}
	out = append(out, table.Row{Line: rows[0].Line, Cells: pick(heads[lang]), First: true, Ruled: rows[0].Prose})
	for k, l := range run {
		end := len(rows)
		if k+1 < len(run) {
			end = run[k+1].row
		}
		r := table.Row{Line: rows[l.row].Line, Cells: pick(cells(l))}
		if end > l.row+1 {
			r.Spans = uint8(min(rows[end-1].Line-r.Line+1, 255))
		}
		out = append(out, r)
	}
	return out
}
