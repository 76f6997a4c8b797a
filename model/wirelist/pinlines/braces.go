package pinlines

import (
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
)

// braces is a sign at the end of a line that joins it to those beside it, with what is said of all of them behind it:
//
//	3  CAN1H   YELLOW   22AWG   \ twisted        9  therm +   wht  26  )
//	4  CAN1L   GREEN    22AWG   /               10  therm -   gry  26  ) twisted pair
var braces = regexp.MustCompile(`(?:^|[ \t]{2,}|\t)(?:─*([\\/})\]>|┐┘┤╮╯┑┙┥]))[_─-]*(?:[ \t]+(\S.*))?$`)

// tightBrace is such a sign with one blank before it and nothing behind.
var tightBrace = regexp.MustCompile(`[ \t]([\\/}])$`)

// cutBrace cuts such a sign off a line.
func (l *line) cutBrace(text string) string {
	if !strings.ContainsAny(text, `\/})]>|┐┘┤╮╯┑┙┥`) {
		return text // most lines
	}
	m := braces.FindStringSubmatchIndex(text)
	if m == nil {
		m = tightBrace.FindStringSubmatchIndex(text)
	}
	if m == nil || strings.Count(text, "(") > strings.Count(text, ")") {
		return text
	}
	l.brace = text[m[2]:m[3]]
	if len(m) > 4 && m[4] >= 0 {
		l.braced = withoutBlanks(text[m[4]:m[5]])
	}
	return strings.TrimRight(text[:m[0]], " \t")
}

// join says of the lines that braces hold together what stands beside the brace; ok is false where a brace holds one line alone.
func join(run []*line) bool {
	for i, l := range run {
		beside := i > 0 && strings.ContainsAny(run[i-1].brace, `\}|┐╮`) ||
			i+1 < len(run) && strings.ContainsAny(run[i+1].brace, `/}|┘╯`)
		if l.brace == ">" && !beside && l.braced != "" {
			if l.to != "" {
				return false
			}
			l.to, l.brace, l.braced = l.braced, "", "" // an arrow
		}
	}
	for i := 0; i < len(run); {
		if run[i].brace == "" {
			i++
			continue
		}
		n := held(run[i:])
		if n < 2 {
			return false
		}
		say(run[i : i+n])
		i += n
	}
	return true
}

// held is how many lines the brace of the first of some holds.
func held(run []*line) (n int) {
	opens := strings.ContainsAny(run[0].brace, `\┐╮┑`)
	texts := 0
	for n < len(run) && run[n].brace != "" {
		r, _ := utf8.DecodeRuneInString(run[n].brace)
		if opens && n > 0 && strings.ContainsRune(`\┐╮┑`, r) {
			return n
		}
		if run[n].braced != "" {
			texts++
		}
		n++
		if opens && strings.ContainsRune(`/┘╯┙`, r) {
			return n
		}
	}
	if !opens && texts > 1 && n == 2*texts { // pairs right below each other
		return 2
	}
	return n
}

// twists are beginnings of the words for wires that are twisted together. From memory, no source.
var twists = regexp.MustCompile(`(?i)\b(?:twist\pL*|pairs?\b|verdrillt|verseilt|torsadée?s?|gedraaid|getwist|intrecciat[ioae]|` +
	`trenzad[oa]s?|partvinnad)`)

// shields are the words for wires in one shield. From memory, no source.
var shields = regexp.MustCompile(`(?i)\b(?:shielded|screened|geschirmt|blindée?s?|afgeschermd|schermat[ioae]|apantallad[oa]s?)`)

// say adds what stands beside a brace to each of the lines that it holds; one that is twisted says with which. The drain of a pair is
// none of the two.
func say(of []*line) {
	var all []string
	for _, l := range of {
		if l.braced != "" {
			all = append(all, l.braced)
		}
	}
	text := strings.Join(all, " ")
	if text == "" {
		return
	}
	end := 0
	if at := twists.FindAllStringIndex(text, -1); at != nil {
		end = at[len(at)-1][1]
	} else if at := shields.FindStringIndex(text); at != nil {
		end = at[1]
	}
	var with []string
	for _, l := range of {
		if !l.isDrain() {
			with = append(with, l.pins[0])
		}
	}
	for _, l := range of {
		if end == 0 || l.isDrain() || len(with) < 2 {
			l.notes = append(l.notes, text)
			continue
		}
		others := slices.DeleteFunc(slices.Clone(with), func(p string) bool { return p == l.pins[0] })
		rest := text[end:]
		if strings.HasPrefix(rest, " ") {
			rest = "," + rest
		}
		l.notes = append(l.notes, text[:end]+" with "+strings.Join(others, " and ")+rest)
	}
}

// isDrain reports whether a line names the drain of a shield.
func (l *line) isDrain() bool {
	return len(l.texts) > 0 && slices.ContainsFunc(strings.Fields(table.Fold(l.texts[0])), name.IsDrainWord)
}

// closeBrackets reads a remark whose brackets open in one line and close in the next as one:
//
//	4  wheel FL +   yellow 0.5   (twisted
//	5  wheel FL -   brown 0.5     with 4)
func closeBrackets(run []*line) {
	for i, l := range run[:len(run)-1] {
		next := run[i+1]
		if len(l.texts) < 2 || len(next.texts) < 2 {
			continue
		}
		a, b := l.texts[len(l.texts)-1], next.texts[len(next.texts)-1]
		if !strings.HasPrefix(a, "(") || strings.Contains(a, ")") || !strings.HasSuffix(b, ")") || strings.Contains(b, "(") {
			continue
		}
		text := strings.Trim(a+" "+b, "()")
		l.texts, next.texts = l.texts[:len(l.texts)-1], next.texts[:len(next.texts)-1]
		next.notes = append(next.notes, text)
		if !strings.HasSuffix(text, " with "+l.pins[0]) {
			l.notes = append(l.notes, text)
		}
	}
}
