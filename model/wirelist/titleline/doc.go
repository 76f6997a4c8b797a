// Package titleline looks at one line of text above a table: whether it says which connector the table is of, or is a remark that never
// names one.
//
//	Bulkhead plug (14 way), engine side. Letters are on the insert.      names it, before a remark
//	Rally car - Schott P1 (12-polig)                                     names it, behind what it is in
//	printed for Nigel                                                    a remark
package titleline
