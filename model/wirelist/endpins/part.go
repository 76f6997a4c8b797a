package endpins

import "contralay/model/wirelist/draft"

// Part parts such ends of all that was read.
func Part(im *draft.Importer) {
	partOfTable(im)
	partWorded(im)
	partDashed(im)
	partCommas(im)
	partInAndOut(im)
	partSpaced(im)
	partSigned(im)
}
