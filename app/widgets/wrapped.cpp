#include "app/widgets/wrapped.h"

#include <QFontMetrics>

namespace rig {

QString inLines(const QString& words, const QFontMetrics& metrics, int room)
{
    QString lines;
    QString line;
    for (const QString& word : words.split(QLatin1Char(' '))) {
        const QString longer = line.isEmpty() ? word : line + QLatin1Char(' ') + word;
        if (line.isEmpty() || metrics.horizontalAdvance(longer) <= room) {
            line = longer;
            continue;
        }
        lines += line.trimmed() + QLatin1Char('\n');
        line = word;
    }
    return lines + line;
}

} // namespace rig
