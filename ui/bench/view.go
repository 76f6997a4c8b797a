package bench

import (
	"fmt"
	"strings"

	"contralay/calc"
	"contralay/model/unit"
	"contralay/ui/draw"
	"contralay/ui/guide"
)

// View draws the screen: exactly height lines of at most w cells.
func (m *Model) View() string {
	if m.quit {
		return ""
	}
	return strings.Join(m.frame(), "\n")
}

func (m *Model) frame() []string {
	wide := len(m.stack) > 0 && m.wideTop()
	l := arrange(m.w, m.height, wide)
	if l.tiny {
		return m.tinyFrame()
	}
	p := m.page(l.list)
	at := m.at(p)
	var r *row
	if len(p.rows) > 0 {
		r = &p.rows[at]
	}
	out := []string{m.paint(styleHead, m.head()), m.rail()}
	if m.height >= 20 {
		out = append(out, "")
	}
	list := m.list(p, at, l.list, l.work)
	mark, seen := "", m
	if r != nil {
		mark = r.id
		if r.show != nil {
			seen = r.show(m)
		}
	}
	if l.big {
		lines := large(m.big(r))
		for k := range bigH {
			t := ""
			if k < len(lines) {
				t = lines[k]
			}
			list = append(list, m.paint(styleRail, draw.Fit(m.plain(t), l.list, m.cfg.ASCII)))
		}
	}
	if l.pic > 0 {
		pic := seen.picture(mark, l.pic, len(list))
		for k := range list {
			out = append(out, list[k]+" | "+pic[k])
		}
	} else {
		out = append(out, list...)
	}
	if m.height >= 20 && !l.big {
		out = append(out, "")
	}
	if l.detail {
		out = append(out, m.inHand(r))
	}
	answer := m.answer(l)
	snag := seen.snagLines(map[bool]int{true: 2, false: 1}[answer == ""])
	out = append(out, seen.figures(l), snag[0])
	if len(snag) > 1 {
		answer = snag[1]
	}
	out = append(out, answer, m.bar(r))
	for k, line := range out {
		if draw.Width(line) > m.w {
			out[k] = draw.Cut(m.plain(line), m.w, m.cfg.ASCII)
		}
		if m.cfg.ASCII && !strings.Contains(out[k], "\x1b") {
			out[k] = draw.Plain(out[k]) // a painted line was spelled out as it was made
		}
	}
	return out
}

func (m *Model) plain(s string) string {
	if m.cfg.ASCII {
		return draw.Plain(s)
	}
	return s
}

func (m *Model) tinyFrame() []string {
	out := make([]string, max(1, m.height))
	for k, t := range wrap(fmt.Sprintf("The bench needs %d x %d; this is %d x %d. Nothing is lost. Q quits.", tinyW, tinyH, m.w, m.height), max(1, m.w)) {
		if k < len(out) {
			out[k] = draw.Cut(t, max(1, m.w), m.cfg.ASCII)
		}
	}
	return out
}

// head is number, revision and name, the branch, and whether it is saved.
func (m *Model) head() string {
	hd := m.h.Head
	left := strings.TrimSpace(hd.Number.V + " " + hd.Revision.V + "  " + hd.Name.V)
	mid := ""
	if mb, _, ok := m.b(); ok {
		mid = fmt.Sprintf("%s %s  %s to %s  %s %s", mb.ID, mb.Name.V, mb.From, mb.To, m.sys.Length(mb.LengthMM), m.sys.Name())
	}
	state := "saved"
	switch {
	case m.dirty():
		state = "not saved"
		if m.noJournal != "" {
			state = "NOT SAVED, no journal"
		}
	case m.path == "":
		state = "demonstration"
		if len(m.h.Branches) == 0 {
			state = "new"
		}
	}
	room := m.w - draw.Width(mid) - draw.Width(state) - 6
	if room < 8 {
		return draw.Fit(mid, m.w-draw.Width(state)-1, m.cfg.ASCII) + " " + state
	}
	return draw.Fit(left, room, m.cfg.ASCII) + "   " + mid + "   " + state
}

// rail is the five steps, the one in hand in capitals between signs.
func (m *Model) rail() string {
	if len(m.stack) > 0 {
		if top := m.top(); m.wideTop() {
			esc := "Esc goes back"
			if top == "branches" {
				esc = "Enter opens one, Esc opens the menu"
			}
			return m.paint(styleRail, "> "+strings.ToUpper(top)+" <") + "   " + esc
		}
	}
	var parts []string
	for s := range steps {
		if s == m.step {
			parts = append(parts, m.paint(styleRail, "> "+strings.ToUpper(stepNames[s])+" <"))
			continue
		}
		parts = append(parts, stepNames[s])
	}
	gap := "   "
	if m.w < 60 {
		gap = " "
	}
	t := strings.Join(parts, gap)
	if len(m.stack) > 0 {
		t += "   (" + m.top() + ", Esc goes back)"
	}
	return t
}

// list is the page's lines and a window on its rows round the one in hand.
func (m *Model) list(p page, at, w, h int) []string {
	var out []string
	put := func(s string) { out = append(out, draw.Fit(m.plain(s), w, m.cfg.ASCII)) }
	said := p.lines
	if m.greet && m.top() != "run" {
		said = append(guide.Welcome(), said...)
	}
	for _, t := range said {
		for _, t := range wrap(t, w) {
			if len(out) < h-4 {
				put(t)
			}
		}
	}
	if len(p.rows) == 0 {
		for _, t := range wrap(p.empty, w) {
			put(t)
		}
	} else if p.cols != "" && len(out) < h-3 {
		put("   " + p.cols)
	}
	room := h - len(out)
	first, last := window(len(p.rows), at, room)
	for k := first; k < last; k++ {
		if k == first && first > 0 && k != at {
			put(fmt.Sprintf("   %d more above", first+1))
			continue
		}
		if k == last-1 && last < len(p.rows) && k != at {
			put(fmt.Sprintf("   %d more below", len(p.rows)-last+1))
			continue
		}
		r := p.rows[k]
		sign := " "
		if k == at {
			sign = ">"
		}
		mark := r.mark
		if mark == "" {
			mark = " "
		}
		t := draw.Fit(m.plain(sign+mark+" "+r.line()), w, m.cfg.ASCII)
		switch {
		case k == at:
			t = m.paint(styleHand, t)
		case r.mark == "!":
			t = m.paint(styleStop, t)
		case r.mark == "?":
			t = m.paint(styleWarn, t)
		}
		out = append(out, t)
	}
	for len(out) < h {
		put("")
	}
	return out[:h]
}

// window is the rows first to last−1 that show when room fit and at is in hand;
// it moves only as far as it must, in half pages, so that nothing jumps.
func window(n, at, room int) (first, last int) {
	if n <= room || room <= 0 {
		return 0, min(n, max(room, 0))
	}
	step := max(1, room/2)
	first = max(0, (at/step)*step-step/2)
	first = min(first, n-room)
	for at >= first+room-1 && first < n-room {
		first++
	}
	return first, first + room
}

// inHand repeats the row in hand in words, or shows the open field.
func (m *Model) inHand(r *row) string {
	if e := m.entry; e != nil {
		was := ""
		if e.value != "" {
			was = "   was " + e.value
		}
		u := ""
		if e.unit != "" {
			u = " " + e.unit
		}
		return m.paint(styleRail, fmt.Sprintf("%s: [%s]%s%s", e.label, tail(e.draft, m.w-draw.Width(e.label)-5-len(u)), u, was))
	}
	switch {
	case r == nil:
		return ""
	case r.more != nil:
		return "> " + r.more()
	case r.detail == "":
		return ""
	}
	return "> " + r.detail
}

// tail is the end of a text that is too long for its place: where the typing goes on.
func tail(s string, w int) string {
	const least = 8
	runes := []rune(s)
	for len(runes) > least && draw.Width(string(runes)) > max(w, least) {
		runes = runes[1:]
	}
	if len(runes) < len([]rune(s)) {
		return "..." + string(runes[min(3, len(runes)):])
	}
	return s
}

// figures is the strip of the numbers worked on.
func (m *Model) figures(l layout) string {
	_, b, ok := m.b()
	if m.top() == "run" && !m.layingNow() {
		return m.paint(styleRail, fmt.Sprintf("%d of %d steps done", stepsDone(m.runSteps(), m.build()), len(m.runSteps())))
	}
	if !ok || b.OverMM <= 0 {
		return "OVER -"
	}
	mem := ""
	if b.Standing == "memory" {
		mem = "~"
	}
	t := fmt.Sprintf("OVER %s%s (%s - %s) %s", m.sys.Diameter(b.OverMM), mem, m.sys.Diameter(b.OverMinMM), m.sys.Diameter(b.OverMaxMM), m.sys.Name())
	if c := &b.Learned; c.Of != "" {
		t += fmt.Sprintf(", predicted %s %s, spread %s", m.sys.Diameter(c.PredictedMM), m.plusMinus(b.OverMM-c.PredictedMM), m.sys.Fine(b.OverMM*unit.Millimetre(c.Spread)))
	}
	wire := unit.Millimetre(0)
	for _, i := range m.wiresHere() {
		wire += m.sheet.Wires[i].Cut
	}
	more := []string{
		"mass " + grams(b.Gram, b.GramKnown),
		"bend " + m.sys.Length(b.Bend.MinMM) + " " + m.sys.Name(),
	}
	if b.Sheath.Verdict.Wraps {
		more = append([]string{"in sheath " + m.sys.Diameter(b.Sheath.Verdict.OverMM)}, more...)
	}
	if b.Warm.Known {
		more = append(more, "hottest "+unit.Fixed(float64(b.Warm.HottestC), 0)+" C")
	}
	if mem != "" {
		more = append(more, "~ from memory")
	}
	if !m.waiting() { // a sum that lacks a branch would mislead
		more = append(more, "whole loom "+unit.Fixed(float64(m.sheet.Totals.WireMM)/1000, 1)+" m, "+grams(m.sheet.Totals.Gram, m.sheet.Totals.GramKnown))
	}
	for _, s := range more {
		if draw.Width(t)+3+draw.Width(s) <= l.w {
			t += "   " + s
		}
	}
	return m.paint(styleRail, t)
}

// grams is a mass, or a dash where part of it is not known.
func grams(g unit.Gram, known bool) string {
	if !known {
		return "-"
	}
	return unit.Fixed(float64(g), 0) + " g"
}

// snagLine is the worst snag in one line; a sound loom leaves it empty.
func (m *Model) snagLine() string { return m.snagLines(1)[0] }

// snagLines is the worst snag, once, in up to so many lines.
func (m *Model) snagLines(most int) []string {
	g, n, any := m.worst()
	if !any {
		return []string{""}
	}
	mark, st := "?", styleWarn
	if g.Level == calc.Stop {
		mark, st = "!", styleStop
	}
	more := ""
	if g.Count > 1 {
		more = fmt.Sprintf(" (%d times)", g.Count)
	}
	tail := ""
	if n > 1 {
		tail = fmt.Sprintf("  +%d on Build", n-1)
	}
	text := m.plain(fmt.Sprintf("%s %s %s: %s%s", mark, g.Level, g.Where, g.Says, more))
	if most < 2 || draw.Width(text)+draw.Width(tail) <= m.w {
		return []string{m.paint(st, draw.Cut(text, m.w-draw.Width(tail), m.cfg.ASCII)+tail)}
	}
	first := wrap(text, m.w)[0]
	rest := "  " + strings.TrimSpace(strings.TrimPrefix(text, first))
	return []string{m.paint(st, first), m.paint(st, draw.Cut(rest, m.w-draw.Width(tail), m.cfg.ASCII)+tail)}
}

// answer is what the last key did; else that the screen is too small for the section.
func (m *Model) answer(l layout) string {
	t := m.says
	if t == "" && m.noJournal != "" {
		t = "a crash would lose unsaved work, there is no journal: " + m.noJournal
	}
	if t == "" && l.pic == 0 && !m.wideTop() {
		t = fmt.Sprintf("no section: it needs %d x %d", roomyW, roomyH)
	}
	if m.trouble {
		return m.paint(styleWarn, draw.Cut("? "+t, m.w, m.cfg.ASCII))
	}
	return draw.Cut(t, m.w, m.cfg.ASCII)
}
