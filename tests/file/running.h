#pragma once

#include <QProcess>
#include <QString>
#include <QStringList>

#include <fstream>
#include <iterator>
#include <string>
#include <unistd.h>

// Runs the program rigband-file itself.
namespace rig::test {

struct Answer
{
    int status = -1;
    QString out;
    QString err;
};

inline std::string textOf(const std::string& path)
{
    std::ifstream file{path, std::ios::binary};
    return {std::istreambuf_iterator<char>{file}, std::istreambuf_iterator<char>{}};
}

enum class RunAs {
    Oneself,
    SomebodyElse, // who may write only where everybody may; file permissions do not bind root
};

inline Answer run(const QStringList& arguments, RunAs who = RunAs::Oneself)
{
    constexpr uid_t kNobody = 65534;
    QProcess process;
    if (who == RunAs::SomebodyElse && ::geteuid() == 0)
        process.setChildProcessModifier([] {
            if (::setuid(kNobody) != 0)
                ::_exit(126);
        });
    process.start(QStringLiteral(RIGBAND_FILE), arguments);
    Answer answer;
    if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit)
        return answer;
    answer.status = process.exitCode();
    answer.out = QString::fromUtf8(process.readAllStandardOutput());
    answer.err = QString::fromUtf8(process.readAllStandardError());
    return answer;
}

// What another program says, or nothing when it is not installed.
inline QString outputOf(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60'000))
        return {};
    return QString::fromUtf8(process.readAllStandardOutput());
}

// A PDF without the line that says when it was made.
inline std::string withoutStamp(std::string pdf)
{
    const std::size_t at = pdf.find("/CreationDate");
    return at == std::string::npos ? pdf : pdf.erase(at, pdf.find('\n', at) - at);
}

} // namespace rig::test
