// Package catalogue holds the parts a harness is made from: wire, heat-shrink
// tube, moulded boot, transition, contact, insert with its face, and splice; and
// the kinds of device that it goes to.
//
// The words. An entry is one size of one part. Its source is the document a
// person can go and read, or the admission that there is none; its standing says
// how far to trust it. Where one figure of an entry stands better or worse than
// the rest, it has a standing of its own. A tube's bore is told as supplied (at
// least) and after free recovery (at most), its wall after free recovery.
//
// Default is the catalogue that comes with the program, embedded as TOML. Read
// reads a shop's own file in the same form and refuses everything it does not
// understand, by name. Merge lays the shop's entries over the others, whole
// entry by whole entry: a shop that changes one figure of a wire gives the
// others too, so that one source stands behind one entry.
//
// What a shop's file must give, beside source and standing:
//
//	[[wire]]        spec size over_mm area_mm2 ohm_per_km rated_c
//	[[tube]]        id kind supplied_mm recovered_mm wall_mm recovery_c
//	                service_min_c service_max_c length_change flexible
//	[[boot]]        id shape shell lip_supplied_mm lip_recovered_mm
//	                cable_supplied_mm cable_recovered_mm length_mm
//	[[transition]]  id outlets
//	[[contact]]     size max_a largest_awg smallest_awg
//	[[insert]]      id contacts
//	[[face]]        id rim cavities
//	[[splice]]      id build over_mm length_mm cma_min cma_max
//	[[device]]      id names prefix group cavities layout_is carries, and in
//	                each row of carries cavity what role far
//	[[source]]      id document
//
// and without source and standing, of who builds and what is measured with:
//
//	[[person]]      id name
//	[[instrument]]  id what
//	[[stock]]       of number
//
// In a device each value has a standing of its own: amps_is, duty_is, peak_is,
// limit_is, size_is beside amps, on_s, peak_a, limit_a, size; amps_from and its
// likes say where it comes from, by the ids of sources. There worked is allowed,
// too: arithmetic on a value that somebody printed.
//
// The source of an entry may refer to a [[source]] by its id in braces, one of the program's own or
// of the same file; Merge puts document and place there. One that no file has stays as written.
//
// An insert may name its cavities, and say in its groups of contacts which of them
// have which size; names_source says where that comes from. Where it does not, a
// rule names them, and its names stand as memory.
//
// A Catalogue is made once and only read afterwards, so any number of readers
// may share it. Nothing here computes: a figure that is not known is 0, and calc
// works it out or says that it cannot.
package catalogue
