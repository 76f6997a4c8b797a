package block

import (
	"slices"
	"strings"

	"contralay/model/wirelist/alike"
	"contralay/model/wirelist/arrow"
	"contralay/model/wirelist/plugwires"
	"contralay/model/wirelist/point"
	"contralay/model/wirelist/runline"
	"contralay/model/wirelist/table"
)

// Lines that are written in one way are parted together: package alike sees in all of them what it could not see in one. Where the
// line alone says as much, that is taken.

// together is the way through the lines of a band that are parted so.
type together struct{ *finder }

// alikeLines finds these lines in the sheet once.
func (f together) alikeLines() {
	f.cavities, f.ends = map[int]alike.Line{}, map[int]alike.Line{}
	rows := f.t.Rows
	labelled, numbers := f.labelled(), runline.Numbers{}
	for i := 0; i < len(rows); {
		n := f.alikeFrom(i)
		if n < 2 {
			i++
			continue
		}
		texts := make([]string, n)
		for k, r := range rows[i : i+n] {
			texts[k] = runline.ColonsForDashes(r.Cells[0])
		}
		runs, both := alike.Runs(texts)
		numbered := numbers.Count(texts)
		if labelled != nil && !both {
			runs, both = alike.LabelledRuns(texts)
		}
		if both && (labelled[texts[0]] || alike.Numbered(texts, runs)) {
			for k, l := range runs {
				l.Whole = labelled[texts[0]]
				f.ends[rows[i+k].Line] = l
			}
		} else if lines, ok := alike.Cavities(texts); ok && !numbered {
			if f.moreThanAlone(texts, lines) || alike.ToThings(texts) || max(f.points(i), f.arrowPoints(i)) < n {
				for k, l := range lines {
					f.cavities[rows[i+k].Line] = l
				}
			}
		} else if both && !runline.SayBefore(texts) && partedBadly(texts, runs) {
			for k, l := range runs {
				f.ends[rows[i+k].Line] = l
			}
		}
		i += n
	}
}

// labelled are the lines of the sheet that begin with the label of their wire each, where they do.
func (f together) labelled() map[string]bool {
	var texts []string
	for i := 0; i < len(f.t.Rows); {
		n := f.alikeFrom(i)
		for _, r := range f.t.Rows[i : i+n] {
			texts = append(texts, r.Cells[0])
		}
		i += max(n, 1)
	}
	return alike.Labelled(texts)
}

// alikeFrom is how many rows from one on can be such lines: texts alone, each right below the other, set in alike, that begin
// with a cavity each or have an arrow each.
func (f together) alikeFrom(i int) int {
	rows := f.t.Rows
	n, first := 0, ""
	for i+n < len(rows) {
		r := rows[i+n]
		if i+n+1 < len(rows) && rows[i+n+1].Line == r.Line || len(r.Cells) != 1 || r.Level > 0 || f.t.Marked && !r.Prose ||
			len(r.Cells[0]) > mostLine ||
			strings.HasSuffix(r.Cells[0], ":") || isFullSentence(r.Cells[0]) && !alike.IsSentence(r.Cells[0]) {
			break
		}
		sign, free, led := alike.LeadOf(r.Cells[0])
		if !led {
			sign = "no cavity"
		}
		if n == 0 {
			first = sign
		}
		if n > 0 && (r.Deep != rows[i].Deep || r.Point != rows[i].Point || r.Line != rows[i+n-1].Line+1 || sign != first && !free) {
			break
		}
		if !led && !r.Point {
			if _, to := arrow.In(r.Cells[0]); to == 0 && !strings.Contains(r.Cells[0], " to ") {
				break
			}
		}
		n++
	}
	return n
}

// mostLine is how long a line may be that tells a wire, in bytes (no source).
const mostLine = 160

// moreThanAlone reports whether lines say more together than each of them says alone.
func (f together) moreThanAlone(texts []string, lines []alike.Line) bool {
	together, alone, values := 0, 0, 0 // values counts colours and sizes, those of each line alone taken off
	for i, t := range texts {
		_, text, ok := point.Cut(t)
		if !ok {
			return true
		}
		p := f.parts.Of(text)
		together += filled(lines[i].Signal, lines[i].Colour, lines[i].Size, lines[i].To)
		if p.Size != "" && strings.Trim(p.Size, "0123456789") == "" && lines[i].Size == "" {
			return true // "Pump (2)" is a cavity
		}
		alone += filled(p.Signal, p.Colour, p.Size, p.To)
		values += filled(lines[i].Colour, lines[i].Size) - filled(p.Colour, p.Size)
	}
	return together > alone || together == alone && values > 0
}

func filled(all ...string) (n int) {
	for _, s := range all {
		if s != "" {
			n++
		}
	}
	return n
}

// partedBadly reports whether one of some lines alone is parted in no ends, or leaves in one of them, or in its note, what is neither,
// where the lines together say more.
func partedBadly(texts []string, lines []alike.Line) bool {
	for i, t := range texts {
		from, to, rest := runline.Part(t)
		if id := lines[i].ID; id != "" && (len(rest) < 5 || rest[4] != id) {
			return true
		}
		ends := from + " " + to
		if from == "" || to == "" || rest[2] != "" && rest[2] != lines[i].Remark || strings.ContainsAny(ends, "|,;") ||
			strings.Contains(ends, ": ") || strings.Contains(ends, " - ") || strings.Contains(ends, " – ") ||
			strings.Count(lines[i].From+lines[i].To, ":") > strings.Count(ends, ":") {
			return true
		}
	}
	return false
}

// run parts a row in its two ends and what stands behind them: with the lines that are written as it is, else alone.
func (f *finder) run(r table.Row) (from, to string, rest []string) {
	if l, ok := f.legs[r.Line]; ok {
		return l.Splice, l.End, []string{l.Colour, l.Size, l.Note, l.Signal, "", l.Length}
	}
	if l, ok := f.ends[r.Line]; ok {
		return runline.WithoutFrom(l.From, r.Cells[0]), l.To, []string{l.Colour, l.Size, l.Remark, l.Signal, l.ID}
	}
	from, to, rest = f.lines.Part(r.Cells[0])
	return runline.WithoutFrom(from, r.Cells[0]), to, rest
}

// runOrFree is run of a line that may also say that a cavity is free.
func (f *finder) runOrFree(r table.Row) (from, to string, rest []string, free bool) {
	if from, to, rest = f.run(r); from != "" || len(r.Cells) != 1 {
		return from, to, rest, false
	}
	from, to, rest = runline.Free(r.Cells[0])
	return from, to, rest, from != ""
}

// cavityLines is how many rows from one on are cavities that are parted together.
func (f together) cavityLines(i int) (n int) {
	for i+n < len(f.t.Rows) {
		r := f.t.Rows[i+n]
		if _, ok := f.cavities[r.Line]; !ok || r.Level > 0 || n > 0 && r.Line != f.t.Rows[i+n-1].Line+1 {
			break
		}
		n++
	}
	if n > 0 && f.areLamps(i) {
		return 0
	}
	return n
}

// areLamps reports whether a line that says nothing but a colour stands below a heading of lamps.
func (f together) areLamps(i int) bool {
	l := f.cavities[f.t.Rows[i].Line]
	if filled(l.Signal, l.Size, l.To) > 0 || l.Colour == "" {
		return false
	}
	_, device := f.headed(nil, f.t.Rows[i].Line)
	return plugwires.LookedUp(device) == plugwires.Legend
}

// listAlike makes the block of such cavities.
func (f together) listAlike(points []table.Row) {
	b := Block{Table: f.t, Path: slices.Clone(f.path), Titles: parentPoint(f.titles(), points), Listed: true, Fixed: true}
	for _, r := range points {
		l := f.cavities[r.Line]
		r.Cells, r.Prose = []string{l.Pin, l.Signal, l.Colour, l.Size, l.To, l.Remark}, false
		b.Rows = append(b.Rows, r)
	}
	f.close()
	f.all = append(f.all, b)
}
