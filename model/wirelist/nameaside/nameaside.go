// Package nameaside takes a remark in brackets off the name of a net: "run lamp (outside feed, stays live!)".
package nameaside

import "strings"

// leastWords is how many words in brackets are a remark; fewer may be a part of the name, "Lamp (left rear)" (no source).
const leastWords = 6

// Cut parts a name in what the net is called and the remark behind it in brackets: one that warns, one of many words, or what is said of
// the loose end of a spare. The remark is "" where there is none.
func Cut(called string) (bare, remark string) {
	if bare, remark = cutSpare(called); remark != "" {
		return bare, remark
	}
	open := strings.LastIndexByte(called, '(')
	if open < 1 || !strings.HasSuffix(called, ")") || strings.Count(called, "(") > 1 {
		return called, ""
	}
	in := strings.TrimSpace(called[open+1 : len(called)-1])
	bare = strings.TrimSpace(called[:open])
	if bare == "" || !strings.HasSuffix(in, "!") && len(strings.Fields(in)) < leastWords {
		return called, ""
	}
	return bare, in
}
