#include "core/store/unlocked_table.h"

#include "core/store/values.h"

namespace rig {

Outcome removeRows(StoreFile::Connection& connection, std::string_view table, std::string_view key,
                   const IdBytes& id)
{
    QStringList drops;
    QStringList makes;
    Outcome done = connection.each(
        QStringLiteral("SELECT name, sql FROM main.sqlite_schema WHERE type = 'trigger' AND tbl_name = ?"),
        {valueOf(table)}, [&](Row& row) {
            drops.append(QStringLiteral("DROP TRIGGER main.") + QString::fromStdString(row.text()));
            makes.append(QString::fromStdString(row.text()));
        });
    for (const QString& drop : drops)
        if (done)
            done = connection.run(drop);
    if (done)
        done = connection.run(QStringLiteral("DELETE FROM main.%1 WHERE %2 = ?")
                                  .arg(valueOf(table).toString(), valueOf(key).toString()),
                              {valueOf(id)});
    for (const QString& make : makes)
        if (done)
            done = connection.run(make);
    return done;
}

} // namespace rig
