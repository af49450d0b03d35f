#include "tests/house/forbidden_words.h"

#include "app/wording/report_words.h"

#include <QFile>
#include <QRegularExpression>

namespace rig::test {

namespace {

QRegularExpression anyOf(const QStringList& words)
{
    return QRegularExpression{QStringLiteral("\\b(%1)\\b").arg(words.join(QLatin1Char('|'))),
                              QRegularExpression::CaseInsensitiveOption |
                                  QRegularExpression::UseUnicodePropertiesOption};
}

} // namespace

QStringList forbiddenWords()
{
    QFile file{QStringLiteral(RIG_TEST_DATA "/../house/forbidden_words.txt")};
    if (!file.open(QIODevice::ReadOnly))
        return {};
    return QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
}

QStringList forbiddenIn(const QString& text)
{
    static const QRegularExpression words = anyOf(forbiddenWords());
    QString said = text.simplified();
    said.remove(ReportWords::caution());
    QStringList found;
    for (auto match = words.globalMatch(said); match.hasNext();)
        found << match.next().captured(0);
    return found;
}

} // namespace rig::test
