package main

import (
	"fmt"

	calcsheet "contralay/calc/sheet"
	"contralay/ui/paper"
	"contralay/ui/paper/filename"
)

// handOver writes the set that goes with a finished harness, and says whether its first page is a certificate.
func handOver(s *calcsheet.Sheet, meta paper.Meta, folder string, marks paper.Marks, w world) (int, error) {
	if meta.Add != (paper.Add{}) {
		return usage, misuse{"--add goes with the set to build from, not with --customer"}
	}
	sheet, conforms, err := paper.Customer(s, meta)
	if err != nil {
		return usage, err
	}
	base := filename.Sheet(s.H.Head.Number.V, s.H.Head.Revision.V) + "-customer"
	says := ""
	switch {
	case meta.Serial == "":
		says = fmt.Sprintf("The certificate and the pages of how it was built need a serial: --serial N. Serials in the file: %s.\n",
			paper.Serials(s))
	case !conforms:
		says = fmt.Sprintf("Serial %s is NOT COMPLETE: the first page says what is missing instead of a certificate.\n", shown(meta.Serial))
	}
	if meta.Serial != "" {
		base += "-" + filename.OnDisk(meta.Serial)
	}
	wrote, err := writePaper(sheet, base, folder, marks)
	if err != nil {
		return usage, err
	}
	return ok, print(w.out, fmt.Sprintf("%s, and %d lists in the same folder, identity %s\n%s", shown(wrote.page), wrote.lists,
		wrote.identity, says))
}
