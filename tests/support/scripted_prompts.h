#pragma once

#include "app/pages/prompts.h"

#include <deque>
#include <functional>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace rig::test {

// Answers from a script, and remembers what was asked. Without an answer left it turns away, as Esc does.
class ScriptedPrompts : public Prompts
{
public:
    std::deque<bool> confirmations;
    std::deque<std::string> texts;
    std::deque<std::string> newFiles;
    std::deque<std::string> openFiles;
    std::deque<std::string> saveFiles;

    // What happens elsewhere while a question stands, once.
    std::function<void()> meanwhile;

    std::vector<std::string> told;
    std::vector<std::string> asked;     // questions, in order; files by their filter
    QStringList offered;                // answers to the last question
    std::vector<std::string> suggested; // names for files to save

    void tell(QWidget*, const QString& text) override { told.push_back(text.toStdString()); }

    bool confirm(QWidget*, const QString&, const QString& question, const QString&) override
    {
        asked.push_back(question.toStdString());
        if (const auto happens = std::exchange(meanwhile, nullptr))
            happens();
        return next(confirmations).value_or(false);
    }

    void askText(QWidget*, const QString&, const QString& question, const QStringList& answers,
                 std::function<void(const QString&)> take) override
    {
        asked.push_back(question.toStdString());
        offered = answers;
        if (const auto text = next(texts))
            take(QString::fromStdString(*text));
    }

    QString askNewFile(QWidget*, const QString& filter) override { return fileFrom(newFiles, filter); }
    QString askOpenFile(QWidget*, const QString& filter) override { return fileFrom(openFiles, filter); }
    QString askSaveFile(QWidget*, const QString& filter, const QString& suggestedName) override
    {
        suggested.push_back(suggestedName.toStdString());
        return fileFrom(saveFiles, filter);
    }

private:
    template <typename T> static std::optional<T> next(std::deque<T>& script)
    {
        if (script.empty())
            return std::nullopt;
        T first = std::move(script.front());
        script.pop_front();
        return first;
    }

    QString fileFrom(std::deque<std::string>& script, const QString& filter)
    {
        asked.push_back(filter.toStdString());
        return QString::fromStdString(next(script).value_or(std::string{}));
    }
};

} // namespace rig::test
