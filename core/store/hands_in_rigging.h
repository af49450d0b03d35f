#pragma once

#include <QString>

namespace rig {

// SELECTs of `record` and `person`, to stand in brackets.

// Who was second at a joint, and who connected, as it was stated last for each side.
inline QString partsInRiggingSql()
{
    return QStringLiteral(
        "SELECT record, person FROM answer WHERE turn = 'second'"
        " UNION SELECT c.record, p.person FROM connected c JOIN connected_person p ON p.connected = c.id"
        " WHERE NOT EXISTS (SELECT 1 FROM connected later WHERE later.record = c.record"
        " AND later.side = c.side AND (later.stated_at, later.id) > (c.stated_at, c.id))");
}

// The same and everybody else whom a record names as having had a hand in it.
inline QString namedInRiggingSql()
{
    return partsInRiggingSql() +
           QStringLiteral(" UNION SELECT id, leader FROM rigging_record"
                          " UNION SELECT record, first FROM closing UNION SELECT record, second FROM closing"
                          " UNION SELECT record, person FROM answer"
                          " UNION SELECT record, person FROM reading WHERE record IS NOT NULL"
                          " UNION SELECT record, person FROM surface_answer"
                          " UNION SELECT record, cockpit FROM surface_answer");
}

} // namespace rig
