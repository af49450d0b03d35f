#pragma once

#include "app/widgets/asked_frame.h"
#include "core/rigging/rigging_record.h"

#include <array>
#include <optional>

class QLabel;
class QPushButton;

namespace rig {

// Which answers a question has. A pull can be done or not; what is looked at may also be felt.
enum class AnswerChoice { YesNo, OrCannotSee, OrFelt };

// One question with its answers. Whoever answers says so; the tile only shows it.
class QuestionTile : public AskedFrame
{
    Q_OBJECT

public:
    QuestionTile(const QString& title, const QString& hint, AnswerChoice choice, QWidget* parent = nullptr);

    void setTitle(const QString& title);
    void setHint(const QString& hint);
    void setAnswer(std::optional<Answer> answer);
    // `asked`: this is the question open now. `open`: it may be answered at all.
    void setState(bool asked, bool open);
    void focusFirst();

signals:
    void answered(rig::Answer answer);

private:
    QPushButton* addButton(Answer answer);

    QString m_title;
    QLabel* m_heading = nullptr;
    QLabel* m_hint = nullptr;
    std::array<QPushButton*, 4> m_buttons{}; // by their answer
};

} // namespace rig
