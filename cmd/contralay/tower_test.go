package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// floors are the tower, bottom first: any floor may use any lower one.
var floors = []string{"model", "calc", "ui", "cmd"}

func floor(pkg string) int {
	for k, f := range floors {
		if pkg == f || strings.HasPrefix(pkg, f+"/") {
			return k
		}
	}
	return -1
}

// under reports whether a package lies in one of some folders, or is one.
func under(pkg string, folders ...string) bool {
	for _, f := range folders {
		if pkg == f || strings.HasPrefix(pkg, f+"/") {
			return true
		}
	}
	return false
}

// forbidden is what the pure floors never import directly.
var forbidden = []string{"os", "time", "io/ioutil", "math/rand", "github.com/charmbracelet", "github.com/muesli", "github.com/mattn"}

// A room is a package of ours with what it imports.
type room struct {
	pkg     string
	imports map[string]string // import path → a file that has it
}

// rooms reads what every package of the program imports, tests not counted.
func rooms(t *testing.T) []room {
	t.Helper()
	root := filepath.Join("..", "..")
	seen, byPkg := 0, map[string]int{}
	var all []room
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		if d.IsDir() && path != root && (strings.HasPrefix(d.Name(), ".") || d.Name() == "testdata") {
			return filepath.SkipDir
		}
		if !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		rel, err := filepath.Rel(root, filepath.Dir(path))
		if err != nil {
			return err
		}
		pkg := filepath.ToSlash(rel)
		k, known := byPkg[pkg]
		if !known {
			k, byPkg[pkg] = len(all), len(all)
			all = append(all, room{pkg: pkg, imports: map[string]string{}})
		}
		f, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		seen++
		for _, i := range f.Imports {
			name, _ := strconv.Unquote(i.Path.Value)
			all[k].imports[name] = path
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if seen < 200 || len(all) < 50 {
		t.Fatalf("only %d files of %d packages read: the test looks in the wrong place", seen, len(all))
	}
	return all
}

// phases are the phases of Build, each with the phases whose functions it may call.
var phases = map[string][]string{
	"wires": {}, "ends": {"wires"}, "bundle": {"ends"}, "planning": {"bundle"}, "length": {"wires"},
	"over": {"bundle", "ends", "length", "wires"}, "threading": {"over", "wires"}, "current": {"wires"},
	"built": {"bundle", "ends", "threading", "wires"},
}

// screens are the families of screens: each stands on desk, words and what is below.
var screens = []string{"board", "ends", "flat", "layers", "lists", "several", "sheath", "tree", "values", "wires"}

// leads are the families whose rows stand on the pages of another: the map and what hangs on it lead to
// whatever can be done there.
var leads = map[string][]string{"tree": {"ends"}, "board/runs/others": {"board/runs/say"},
	"board/runs/cards": {"board/runs/say", "board/runs/card"}}

// lists are the parts of the reader of lists, the lowest first: each may use those before it.
var lists = []string{"commas", "abreast", "signs", "twoscripts", "columned", "comment", "hueword", "markup", "pinword", "plugword",
	"strokes", "codepage", "icons", "quotation", "quotedcells", "inbars",
	"table", "strands", "squareword", "value", "huekey", "report", "prose",
	"cable", "freeword", "doingword", "stripname", "titleline", "name", "huecodes", "nameaside", "placehead", "freesaid", "signoff",
	"words", "printed", "endtext", "sentence", "sidehead", "rising", "shape", "squaremm", "tail", "cableonce",
	"corecells", "pinhues", "countrow", "iolist", "labelids", "lineletters", "column",
	"cablelines", "worksteps", "fuseways", "doubt", "cableheads", "pads", "endvalues", "arrow",
	"point", "runline", "titlepin",
	"padlines", "alike", "lettered", "jotted", "penned", "stamped", "leaders", "pinlines", "noted", "record", "endrows", "goeson", "manual",
	"ownends", "atplaces", "boardpads", "connectto",
	"gaprows", "midarrow", "parthead", "twoheads", "severalto", "codedwires", "dotends", "farheads",
	"stripsides", "splicecells", "outputs", "thingheads", "titleplugs", "plaintitle", "pieces", "toldcells", "partmark",
	"evenlines", "manywires", "spokenpins",
	"keyed", "wiresaid", "leadvalues", "grid", "twoside", "titled",
	"parted", "plugwires", "huelines", "copies", "madeover", "block", "bothends", "described", "farcolumn", "thingpins", "together",
	"settle", "toget", "plugindex", "reading", "draft", "ratings", "saidonce", "likeabove",
	"total", "taghues", "farside", "runon", "grouphead", "boxtitles", "cablecells", "row", "endpins", "toldpairs", "join", "audit"}

// benchtest opens the whole bench for the tests of its parts; heattest is another method that the
// balance of heat is checked against; shortForm is how tests are run by default.
const (
	benchtest = "ui/bench/benchtest"
	heattest  = "calc/formula/heat/heattest"
	shortForm = "model/shorttest"
)

// mayImport says why a package of ours may not import another, or "".
func mayImport(pkg, own string) string {
	if floor(own) > floor(pkg) {
		return "every arrow points down"
	}
	if (own == shortForm || own == heattest) && pkg != "calc/calctest" && (own == heattest || pkg != benchtest) ||
		own == "calc/calctest" || own == benchtest {
		return "it is for tests only"
	}
	if pkg == "ui/bench/kit" && !under(own, "ui/draw", "model/unit", "model/visible") {
		return "a widget knows text and quantities, nothing of the bench"
	}
	phase, isPhase := strings.CutPrefix(pkg, "calc/phase/")
	to, toPhase := strings.CutPrefix(own, "calc/phase/")
	part, isPart := strings.CutPrefix(pkg, "model/wirelist/")
	toPart, _ := strings.CutPrefix(own, "model/wirelist/")
	switch {
	case own == "model/wirelist/listtest":
		return "only tests use it"
	case isPart && part != "listtest":
		if own == "model/wirelist" || slices.Contains(lists, toPart) && slices.Index(lists, part) < slices.Index(lists, toPart) {
			return "a part of the reader of lists uses those below it"
		}
		if !slices.Contains(lists, part) {
			return "it is in no list of the parts of the reader of lists"
		}
	case pkg == heattest && own == "calc/formula/heat":
		return "it shares nothing with what is checked against it"
	case under(pkg, "calc/formula"):
		if under(own, "calc") && !under(own, "calc/formula") || under(own, "model") && own != "model/unit" {
			return "a formula knows quantities, not nouns"
		}
	case pkg == "model/file/schema":
		if own != "model" && own != "model/unit" && own != "model/visible" {
			return "a schema knows the nouns and their quantities; the file reads and saves"
		}
	case pkg == "calc/sheet":
		if under(own, "calc") && !under(own, "calc/formula") {
			return "a sheet knows no phase and no query"
		}
	case isPhase:
		if _, known := phases[phase]; !known {
			return "it is in no list of the phases"
		}
		for _, lower := range phases[phase] {
			if to == lower {
				return ""
			}
		}
		if toPhase || own == "calc" || under(own, "calc/query") {
			return "a phase uses the sheet, its own lower phases and the formulas"
		}
	case pkg == "calc":
		if under(own, "calc/query") {
			return "what builds a sheet asks it nothing"
		}
	}
	if under(pkg, "ui/draw", "ui/paper") && under(own, "ui/bench") {
		return "the bench uses draw and paper, not the other way"
	}
	if own == benchtest {
		return "it is for tests alone"
	}
	if pkg == "ui/bench/kit" && (under(own, "ui/bench", "calc") || under(own, "model") && own != "model/unit" && own != "model/visible") {
		return "a widget knows no harness and no desk"
	}
	if family, is := strings.CutPrefix(pkg, "ui/bench/"); is && pkg != benchtest {
		if to, is := strings.CutPrefix(own, "ui/bench/"); is && slices.Contains(leads[family], to) {
			return ""
		}
		if own == "ui/bench" || under(family, screens...) && under(own, "ui/bench") && !under(own, "ui/bench/desk", "ui/bench/kit",
			"ui/bench/words") &&
			!under(own, pkg) {
			return "a screen stands on the desk, not on the shell or another screen"
		}
	}
	return ""
}

func TestTower(t *testing.T) {
	for _, r := range rooms(t) {
		if floor(r.pkg) < 0 {
			t.Errorf("%s stands on no floor of the tower", r.pkg)
		}
		forTests := r.pkg == "calc/calctest" || r.pkg == heattest // which read testdata
		pure := r.pkg == "model" || under(r.pkg, "calc") && !forTests
		for name, path := range r.imports {
			if own, is := strings.CutPrefix(name, "contralay/"); is {
				if why := mayImport(r.pkg, own); why != "" {
					t.Errorf("%s imports %s: %s", path, name, why)
				}
				continue
			}
			for _, no := range forbidden {
				if pure && (name == no || strings.HasPrefix(name, no+"/")) {
					t.Errorf("%s imports %s: neither calc nor the root of model touch the world", path, name)
				}
			}
		}
	}
}

// The rules of the tower themselves: what they refuse and what they let through.
func TestMayImport(t *testing.T) {
	for _, c := range []struct {
		pkg, own string
		may      bool
	}{
		{"calc", "ui/bench", false}, {"model", "calc/sheet", false}, {"cmd/contralay", "calc", true},
		{"model/wirelist/row", "model/wirelist/shape", true}, {"model/wirelist/shape", "model/wirelist/row", false},
		{"model/wirelist/value", "model/wirelist", false}, {"model/wirelist/new", "model/wirelist/table", false},
		{"model/wirelist", "model/wirelist/join", true}, {"model/wirelist", "model/wirelist/listtest", false},
		{"model/wirelist/listtest", "model/wirelist/table", true},
		{"model/file", "model/file/schema", true}, {"model/file/schema", "model/file", false}, {"model/file/schema", "model", true},
		{"calc/formula/lay", "model", false}, {"calc/formula/lay", "model/unit", true}, {"calc/formula/plan", "calc/formula/lay", true},
		{"calc/formula/heat", heattest, false}, {heattest, "calc/formula/heat", false}, {heattest, "model/unit", true},
		{"calc/formula/lay", "calc/sheet", false}, {"calc/sheet", "calc/phase/wires", false}, {"calc/sheet", "calc/formula/lay", true},
		{"calc/phase/ends", "calc/phase/wires", true}, {"calc/phase/wires", "calc/phase/ends", false}, {"calc/phase/wires", "calc",
			false},
		{"calc/phase/new", "calc/sheet", false}, {"calc/phase/over", "calc/query/why", false}, {"calc/query/why", "calc", true},
		{"calc", "calc/query/why", false}, {"ui/paper", "ui/bench/desk", false}, {"ui/bench/wires", "ui/bench/tree", false},
		{"ui/bench/tree", "ui/bench/wires", false}, {"ui/bench/tree", "ui/bench/ends", true}, {"ui/bench/ends", "ui/bench/tree", false},
		{"ui/bench/wires", "ui/bench/desk", true}, {"ui/bench/desk", "ui/bench/benchtest", false},
		{"ui/bench/kit", "ui/bench/desk", false}, {"ui/bench/kit", "ui/draw", true}, {"ui/bench/desk", "ui/bench", false},
		{"ui/bench/kit", "ui/bench/desk", false},
		{"ui/bench/kit", "model", false},
		{"ui/bench/kit", "ui/draw", true}, {"ui/bench/wires", "ui/bench/kit", true}, {"ui/bench", "ui/bench/tree", true},
		{"ui/bench/benchtest", "ui/bench", true}, {"cmd/contralay", "ui/bench/benchtest", false},
		{"ui/bench/wires", "ui/bench/benchtest", false},
		{"calc", shortForm, false}, {"ui/bench", shortForm, false}, {"calc/calctest", shortForm, true}, {benchtest, shortForm, true},
	} {
		if why := mayImport(c.pkg, c.own); (why == "") != c.may {
			t.Errorf("%s imports %s: %q", c.pkg, c.own, why)
		}
	}
}

// The one init of the program must sort before the terminal library, or it comes
// too late to keep it from asking the terminal.
func TestQuietSortsFirst(t *testing.T) {
	if !("contralay/ui/quiet" < "github.com/charmbracelet/bubbletea") {
		t.Fatal("the module path sorts after the terminal library")
	}
}
