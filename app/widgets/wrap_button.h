#pragma once

#include <QPushButton>

namespace rig {

// A button as wide as the room it is given, whose words go on to another line where they have to.
class WrapButton : public QPushButton
{
    Q_OBJECT

public:
    explicit WrapButton(QWidget* parent = nullptr);

    void setWords(const QString& words);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void wrap();

    QString m_words; // on one line
};

} // namespace rig
