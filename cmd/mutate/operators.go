package main

import (
	"go/ast"
	"go/token"
	"go/types"
	"strings"
)

// A mutant is one small fault in one statement.
type mutant struct {
	id       int
	room     *room
	file     *source
	operator string
	function string   // the declaration it stands in
	owner    ast.Node // the statement, or the specification of constants or variables
	whole    ast.Node // the outermost function with a body; nil outside of functions
	before   token.Pos
	from, to int // of the text that is replaced
	becomes  string
}

// swaps are the operators that stand for one another, by their signs.
var swaps = map[token.Token]token.Token{
	token.LSS: token.LEQ, token.LEQ: token.LSS, token.GTR: token.GEQ, token.GEQ: token.GTR,
	token.EQL: token.NEQ, token.NEQ: token.EQL, token.LAND: token.LOR, token.LOR: token.LAND,
	token.ADD: token.SUB, token.SUB: token.ADD, token.MUL: token.QUO, token.QUO: token.MUL, token.REM: token.MUL,
	token.ADD_ASSIGN: token.SUB_ASSIGN, token.SUB_ASSIGN: token.ADD_ASSIGN,
	token.MUL_ASSIGN: token.QUO_ASSIGN, token.QUO_ASSIGN: token.MUL_ASSIGN,
	token.INC: token.DEC, token.DEC: token.INC, token.BREAK: token.CONTINUE, token.CONTINUE: token.BREAK,
}

// pairs are the functions that stand for one another.
var pairs = map[string]string{"min": "max", "max": "min", "Min": "Max", "Max": "Min", "Ceil": "Floor", "Floor": "Ceil"}

// A finder gathers what could be changed in a room.
type finder struct {
	room *room
	file *source
	decl string
	out  []*mutant
}

// mutants are all the faults that the operators can put into a room.
func (r *room) mutants() []*mutant {
	f := &finder{room: r}
	for _, s := range r.files {
		f.file = s
		for _, d := range s.tree.Decls {
			f.decl = declared(d)
			if g, is := d.(*ast.GenDecl); is && g.Tok != token.CONST && g.Tok != token.VAR {
				continue
			}
			ast.PreorderStack(d, nil, func(n ast.Node, stack []ast.Node) bool {
				f.visit(n, stack)
				return true
			})
		}
	}
	return f.out
}

// declared is the name of a declaration.
func declared(d ast.Decl) string {
	switch d := d.(type) {
	case *ast.FuncDecl:
		if d.Recv != nil && len(d.Recv.List) > 0 {
			of := d.Recv.List[0].Type
			for {
				switch inner := of.(type) {
				case *ast.StarExpr:
					of = inner.X
					continue
				case *ast.IndexExpr:
					of = inner.X
					continue
				case *ast.Ident:
					return inner.Name + "." + d.Name.Name
				}
				break
			}
		}
		return d.Name.Name
	case *ast.GenDecl:
		if len(d.Specs) > 0 {
			if v, is := d.Specs[0].(*ast.ValueSpec); is {
				return v.Names[0].Name
			}
		}
	}
	return ""
}

// inList is true where a statement stands in a list of them, so that others can stand beside it.
func inList(n ast.Node, stack []ast.Node) bool {
	if len(stack) == 0 {
		return false
	}
	switch n.(type) {
	case *ast.CaseClause, *ast.CommClause:
		return false
	}
	var list []ast.Stmt
	switch p := stack[len(stack)-1].(type) {
	case *ast.BlockStmt:
		list = p.List
	case *ast.CaseClause:
		list = p.Body
	case *ast.CommClause:
		list = p.Body
	}
	for _, s := range list {
		if s == n {
			return true
		}
	}
	return false
}

// add keeps one fault, with the statement and the function it stands in.
func (f *finder) add(n ast.Node, stack []ast.Node, operator string, from, to token.Pos, becomes string) {
	m := &mutant{room: f.room, file: f.file, operator: operator, function: f.decl,
		from: f.file.offset(from), to: f.file.offset(to), becomes: becomes}
	all := append(stack[:len(stack):len(stack)], n)
	for i, n := range all {
		switch n := n.(type) {
		case *ast.FuncDecl:
			m.whole = n
		case *ast.FuncLit:
			if m.whole == nil {
				m.whole = n
			}
		case *ast.ValueSpec:
			m.owner = n
		case *ast.BlockStmt, *ast.DeclStmt:
		case ast.Stmt:
			m.owner = n
			if inList(n, all[:i]) {
				m.before = n.Pos()
			}
		}
	}
	if m.owner != nil {
		f.out = append(f.out, m)
	}
}

// visit offers a node to every operator.
func (f *finder) visit(n ast.Node, stack []ast.Node) {
	switch n := n.(type) {
	case *ast.BinaryExpr:
		f.binary(n, stack)
	case *ast.UnaryExpr:
		if n.Op == token.NOT || n.Op == token.SUB && f.room.info.Types[n].Value == nil {
			f.add(n, stack, "drop "+n.Op.String(), n.Pos(), n.X.Pos(), "")
		}
	case *ast.BasicLit:
		f.literal(n, stack)
	case *ast.IfStmt:
		f.negate(n.Cond, append(stack[:len(stack):len(stack)], n))
	case *ast.ForStmt:
		if n.Cond != nil {
			f.negate(n.Cond, append(stack[:len(stack):len(stack)], n))
		}
	case *ast.AssignStmt:
		f.assign(n, stack)
	case *ast.IncDecStmt:
		f.swap(n, stack, n.Tok, n.TokPos)
		f.drop(n, stack)
	case *ast.ExprStmt, *ast.DeferStmt, *ast.GoStmt, *ast.SendStmt:
		f.drop(n, stack)
	case *ast.BranchStmt:
		if n.Label == nil {
			f.swap(n, stack, n.Tok, n.TokPos)
		}
	case *ast.ReturnStmt:
		f.returns(n, stack)
	case *ast.IndexExpr:
		f.index(n, stack)
	case *ast.SliceExpr:
		if n.Low != nil {
			f.shift(n.Low, stack, "+1")
		}
		if n.High != nil {
			f.shift(n.High, stack, "-1")
		}
	case *ast.CallExpr:
		f.call(n, stack)
	}
}

func (f *finder) swap(n ast.Node, stack []ast.Node, sign token.Token, at token.Pos) {
	if to, can := swaps[sign]; can {
		f.add(n, stack, "swap "+sign.String()+" "+to.String(), at, at+token.Pos(len(sign.String())), to.String())
	}
}

// binary swaps signs; those of arithmetic between numbers only.
func (f *finder) binary(n *ast.BinaryExpr, stack []ast.Node) {
	switch n.Op {
	case token.ADD, token.SUB, token.MUL, token.QUO, token.REM:
		b, is := f.room.info.Types[n].Type.Underlying().(*types.Basic)
		if !is || b.Info()&types.IsNumeric == 0 {
			return
		}
	}
	f.swap(n, stack, n.Op, n.OpPos)
}

// literal makes a whole number one more and any other a tenth more; nought becomes one.
func (f *finder) literal(n *ast.BasicLit, stack []ast.Node) {
	if n.Kind != token.INT && n.Kind != token.FLOAT || len(stack) == 0 {
		return
	}
	if a, is := stack[len(stack)-1].(*ast.ArrayType); is && a.Len == n || f.infinite(n, stack) {
		return
	}
	t := f.room.info.Types[n].Type
	if t == nil {
		return
	}
	b, is := t.Underlying().(*types.Basic)
	if !is {
		return
	}
	by := "+1"
	if b.Info()&types.IsFloat != 0 && strings.Trim(n.Value, "0._") != "" {
		by = "*1.1"
	}
	f.add(n, stack, "number"+by, n.Pos(), n.End(), "("+n.Value+by+")")
}

// infinite is true of a number that math.Inf is called with: of it the sign alone is read, and one more keeps it.
func (f *finder) infinite(n *ast.BasicLit, stack []ast.Node) bool {
	var arg ast.Expr = n
	if minus, is := stack[len(stack)-1].(*ast.UnaryExpr); is && minus.Op == token.SUB && n.Value != "0" {
		arg, stack = minus, stack[:len(stack)-1]
	}
	if len(stack) == 0 {
		return false
	}
	call, is := stack[len(stack)-1].(*ast.CallExpr)
	if !is || len(call.Args) != 1 || call.Args[0] != arg {
		return false
	}
	var name *ast.Ident
	switch fun := call.Fun.(type) {
	case *ast.Ident:
		name = fun
	case *ast.SelectorExpr:
		name = fun.Sel
	default:
		return false
	}
	from, is := f.room.info.Uses[name].(*types.Func)
	return is && from.FullName() == "math.Inf"
}

// negate turns a condition round. Where swapping its sign does the same it is left to that.
func (f *finder) negate(cond ast.Expr, stack []ast.Node) {
	if b, is := cond.(*ast.BinaryExpr); is && (b.Op == token.EQL || b.Op == token.NEQ) {
		return
	}
	f.add(cond, stack, "negate", cond.Pos(), cond.End(), "!("+f.file.cut(cond.Pos(), cond.End())+")")
}

func (f *finder) assign(n *ast.AssignStmt, stack []ast.Node) {
	if n.Tok == token.DEFINE {
		return
	}
	f.swap(n, stack, n.Tok, n.TokPos)
	if id, is := n.Lhs[0].(*ast.Ident); is && id.Name == "_" {
		return
	}
	f.drop(n, stack)
}

// drop leaves a statement out. It stays where it cannot be reached, so that what it uses is used.
func (f *finder) drop(n ast.Node, stack []ast.Node) {
	if inList(n, stack) {
		f.add(n, stack, "drop statement", n.Pos(), n.End(), "if false {"+f.file.cut(n.Pos(), n.End())+"}")
	}
}

// returns gives nothing for one of the results; true for false.
func (f *finder) returns(n *ast.ReturnStmt, stack []ast.Node) {
	var results *ast.FieldList
	for _, p := range stack {
		switch p := p.(type) {
		case *ast.FuncDecl:
			results = p.Type.Results
		case *ast.FuncLit:
			results = p.Type.Results
		}
	}
	if results == nil || len(n.Results) != results.NumFields() {
		return
	}
	var kinds []ast.Expr
	for _, r := range results.List {
		for range max(1, len(r.Names)) {
			kinds = append(kinds, r.Type)
		}
	}
	for i, e := range n.Results {
		kind := f.file.cut(kinds[i].Pos(), kinds[i].End())
		now := f.file.cut(e.Pos(), e.End())
		nothing := "*new(" + kind + ")"
		switch u := f.room.info.Types[kinds[i]].Type.Underlying().(type) {
		case *types.Basic:
			switch {
			case now == "false":
				nothing = "true"
			case u.Info()&types.IsBoolean != 0:
				nothing = "false"
			case u.Info()&types.IsString != 0:
				nothing = `""`
			case u.Info()&types.IsNumeric != 0:
				nothing = "0"
			}
		case *types.Pointer, *types.Slice, *types.Map, *types.Signature, *types.Chan:
			nothing = "nil"
		case *types.Interface:
			if _, parameter := f.room.info.Types[kinds[i]].Type.(*types.TypeParam); !parameter {
				nothing = "nil"
			}
		}
		if now == nothing || now == kind+"{}" || now == "``" {
			continue
		}
		f.add(e, append(stack[:len(stack):len(stack)], n), "return nothing", e.Pos(), e.End(), nothing)
	}
}

// index takes the neighbour of an element.
func (f *finder) index(n *ast.IndexExpr, stack []ast.Node) {
	t := f.room.info.Types[n.X]
	if !t.IsValue() {
		return
	}
	u := t.Type.Underlying()
	if p, is := u.(*types.Pointer); is {
		u = p.Elem().Underlying()
	}
	switch u.(type) {
	case *types.Slice, *types.Array, *types.Basic:
		f.shift(n.Index, stack, "+1")
		f.shift(n.Index, stack, "-1")
	}
}

func (f *finder) shift(e ast.Expr, stack []ast.Node, by string) {
	if _, is := e.(*ast.BasicLit); is {
		return // made one more by literal
	}
	f.add(e, stack, "index"+by, e.Pos(), e.End(), "("+f.file.cut(e.Pos(), e.End())+")"+by)
}

// call takes the greater for the less, and rounds the other way.
func (f *finder) call(n *ast.CallExpr, stack []ast.Node) {
	switch fun := n.Fun.(type) {
	case *ast.Ident:
		if _, is := f.room.info.Uses[fun].(*types.Builtin); is && pairs[fun.Name] != "" && len(n.Args) > 1 {
			f.add(n, stack, "swap "+fun.Name+" "+pairs[fun.Name], fun.Pos(), fun.End(), pairs[fun.Name])
		}
	case *ast.SelectorExpr:
		from := f.room.info.Uses[fun.Sel]
		if from != nil && from.Pkg() != nil && from.Pkg().Path() == "math" && pairs[fun.Sel.Name] != "" {
			f.add(n, stack, "swap "+fun.Sel.Name+" "+pairs[fun.Sel.Name], fun.Sel.Pos(), fun.Sel.End(), pairs[fun.Sel.Name])
		}
	}
}
