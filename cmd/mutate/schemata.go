package main

import (
	"fmt"
	"go/ast"
	"sort"
	"strings"
)

// The variables of the environment that a changed program reads.
const (
	onKey      = "MUTANT_ON"    // the number of the mutant that is to work
	reachKey   = "MUTANT_REACH" // a file that takes the numbers of the mutants whose statements are reached
	helperName = "mutant_on.go"
)

// helper is the file that each changed package gets: which mutant works, and what is reached.
func helper(pkg string) string {
	return "package " + pkg + `

import (
	"os"
	"strconv"
	"sync"
)

var mutantOn = func() int { n, _ := strconv.Atoi(os.Getenv("` + onKey + `")); return n }()

var mutantFile = os.Getenv("` + reachKey + `")

var mutantSeen sync.Map

func mutantReach(id int) {
	if mutantFile == "" {
		return
	}
	if _, seen := mutantSeen.LoadOrStore(id, true); seen {
		return
	}
	f, err := os.OpenFile(mutantFile, os.O_APPEND|os.O_CREATE|os.O_WRONLY, 0o600)
	if err != nil {
		panic(err)
	}
	_, err = f.WriteString(strconv.Itoa(id) + "\n")
	if err != nil {
		panic(err)
	}
	_ = f.Close()
}
`
}

// A span is the part of a changed text that one mutant stands in.
type span struct{ from, to int }

// instrument writes one text of a file that holds several mutants. Each function that has some asks first
// which is to work, and hands its arguments to a copy of its body that has the one fault; the body itself
// only notes that the statement was reached. Labels, results and parameters so stay what they were.
func (s *source) instrument(all []*mutant) (text string, where map[*mutant]span) {
	byWhole := map[ast.Node][]*mutant{}
	var wholes []ast.Node
	for _, m := range all {
		if byWhole[m.whole] == nil {
			wholes = append(wholes, m.whole)
		}
		byWhole[m.whole] = append(byWhole[m.whole], m)
	}
	sort.Slice(wholes, func(i, j int) bool { return wholes[i].Pos() < wholes[j].Pos() })
	where = map[*mutant]span{}
	var b strings.Builder
	at := 0
	for _, w := range wholes {
		b.WriteString(string(s.text[at:s.offset(w.Pos())]))
		s.function(&b, w, byWhole[w], where)
		at = s.offset(w.End())
	}
	b.Write(s.text[at:])
	return b.String(), where
}

// function writes one function with its mutants before it.
func (s *source) function(b *strings.Builder, whole ast.Node, all []*mutant, where map[*mutant]span) {
	var kind *ast.FuncType
	var body *ast.BlockStmt
	switch f := whole.(type) {
	case *ast.FuncDecl:
		kind, body = f.Type, f.Body
	case *ast.FuncLit:
		kind, body = f.Type, f.Body
	}
	params, args := s.parameters(kind)
	results := s.cut(kind.Params.End(), body.Lbrace)
	b.WriteString(s.cut(whole.Pos(), kind.Params.Opening) + params + results + "{\n")
	first, last := s.offset(body.Lbrace)+1, s.offset(body.Rbrace)
	for _, m := range all {
		fmt.Fprintf(b, "if mutantOn == %d {\n", m.id)
		from := b.Len()
		if kind.Results != nil {
			b.WriteString("return ")
		}
		b.WriteString("func" + params + results + "{" + string(s.text[first:m.from]) + m.becomes + string(s.text[m.to:last]) + "}" + args)
		where[m] = span{from, b.Len()}
		if kind.Results == nil {
			b.WriteString("\nreturn")
		}
		b.WriteString("\n}\n")
	}
	// The body itself, with a note before each statement that has a mutant.
	sort.SliceStable(all, func(i, j int) bool { return s.note(all[i], body) < s.note(all[j], body) })
	at := first
	for _, m := range all {
		to := s.note(m, body)
		b.WriteString(string(s.text[at:to]))
		fmt.Fprintf(b, "mutantReach(%d);", m.id)
		at = to
	}
	b.WriteString(string(s.text[at:last]) + "}")
}

// note is where the note of a mutant stands: before its statement, or at the head of the function.
func (s *source) note(m *mutant, body *ast.BlockStmt) int {
	if m.before.IsValid() && m.before > body.Lbrace {
		return s.offset(m.before)
	}
	return s.offset(body.Lbrace) + 1
}

// parameters writes the parameters of a function so that each has a name, and the arguments that hand them on.
func (s *source) parameters(kind *ast.FuncType) (params, args string) {
	var ps, as []string
	for _, f := range kind.Params.List {
		names := []string{}
		for _, n := range f.Names {
			names = append(names, n.Name)
		}
		if len(names) == 0 {
			names = []string{"_"}
		}
		for i, n := range names {
			if n == "_" {
				names[i] = fmt.Sprintf("mutantP%d", len(as))
			}
			more := ""
			if _, is := f.Type.(*ast.Ellipsis); is {
				more = "..."
			}
			as = append(as, names[i]+more)
		}
		ps = append(ps, strings.Join(names, ", ")+" "+s.cut(f.Type.Pos(), f.Type.End()))
	}
	return "(" + strings.Join(ps, ", ") + ")", "(" + strings.Join(as, ", ") + ")"
}

// alone is the text of a file with one mutant and nothing else.
func (m *mutant) alone() string {
	return string(m.file.text[:m.from]) + m.becomes + string(m.file.text[m.to:])
}
